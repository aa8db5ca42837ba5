using System.Collections.Immutable;
using Lanewright.Engineering.Fabrics;

namespace Lanewright.Deliverables;

/// <summary>Wishes that cannot be had, in words.</summary>
public static class WishWords
{
    /// <summary>What holds where a search was broken off.</summary>
    public const string Unproven =
        "a search was broken off on the way: there may be more sets than these, and wishes may have to give way less than is said here";

    /// <summary>Every set of wishes that cannot be had together, a sentence each, and what is to be said where there is none or where no
    /// wish can give way by itself.</summary>
    public static ImmutableArray<string> Sentences(FabricStudy study)
    {
        if (!study.Answer.Options.IsEmpty) return [];
        if (study.Conflicts.IsEmpty)
            return ["the search was broken off before a design was found, and no wishes are proven to stand in the way of one another"];
        var sentences = study.Conflicts.Select(Conflict).ToImmutableArray();
        if (study.Conflicts.Any(c => c.IsEmpty)) return sentences;
        return study.Relaxations.Any(r => r.Possible is not null)
            ? sentences
            : sentences.Add(study.Conflicts.Length > 1
                ? "several sets of wishes stand in the way, so that no wish suffices that gives way by itself"
                : "no wish of these can give way far enough by itself");
    }

    private static string Conflict(ImmutableArray<Wish> conflict) => conflict.IsEmpty
        ? "not to be had whatever wish is given up: nothing in the catalogue joins even one host of each kind"
        : $"not to be had{(conflict.Length > 1 ? " together" : "")}: {string.Join("; ", conflict.Select(w => $"{w.Key} {w.Text}"))}";
}
