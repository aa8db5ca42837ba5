using System.Collections.Immutable;
using Lanewright.Deliverables;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>What links of one class and one share of it have in common.</summary>
internal sealed record LinkKind
{
    /// <summary>Its identifier.</summary>
    public required string Name { get; init; }

    /// <summary>How many links.</summary>
    public required long Links { get; init; }

    /// <summary>The rate.</summary>
    public required string Rate { get; init; }

    /// <summary>The medium.</summary>
    public string Medium { get; init; } = "";

    /// <summary>What it is made with.</summary>
    public string Made { get; init; } = "nothing found";

    /// <summary>The length to order, in metres.</summary>
    public double Metres { get; init; }

    /// <summary>The same in words.</summary>
    public string LengthWords { get; init; } = "";

    /// <summary>Margin of the loss, in dB; null where loss decides nothing or its limit is not known.</summary>
    public double? Margin { get; init; }

    /// <summary>The same in words.</summary>
    public string MarginWords => Margin is { } margin ? Numerals.Fixed(margin, 2) + " dB" : "";

    /// <summary>The verdict.</summary>
    public Verdict Verdict { get; init; } = Verdict.Fail;

    /// <summary>The same in a word.</summary>
    public string VerdictWord => Checks.Word(Verdict);

    /// <summary>Its types.</summary>
    public string Types { get; init; } = "";

    /// <summary>Names of its parts.</summary>
    public ImmutableArray<string> Parts { get; init; } = [];

    /// <summary>Everything a word may be found in.</summary>
    public IEnumerable<string> Words => [Name, Rate, Medium, Made, Types, VerdictWord, .. Parts];

    /// <summary>The kinds of a plan.</summary>
    public static Dictionary<(int Class, int Share), LinkKind> All(DesignedPlan designed)
    {
        var kinds = new Dictionary<(int, int), LinkKind>();
        foreach (var choice in designed.Design.Choices)
        {
            for (var share = 0; share < Math.Max(1, choice.Shares.Length); share++)
                kinds[(choice.Class.Index, share)] = Of(choice, share);
        }
        return kinds;
    }

    private static LinkKind Of(ClassChoice choice, int share)
    {
        var rate = choice.Class.Statement.Rate.ToString();
        var name = Identifiers.Class(choice.Class.Index, share);
        if (choice.Shares.IsEmpty) return new LinkKind { Name = name, Links = choice.Class.Count, Rate = rate };
        var solution = choice.Shares[share].Solution;
        return new LinkKind
        {
            Name = name, Links = choice.Shares[share].Links, Rate = rate, Medium = solution.MediumName, Made = solution.Name,
            Metres = solution.Length.Metres, LengthWords = solution.Length.ToString(), Types = solution.TypeName,
            Margin = solution.Checks.FirstOrDefault(c => c.Name is CheckNames.ChannelLoss or CheckNames.CopperLoss)?.Margin,
            Verdict = solution.Verdict, Parts = [.. solution.Parts.Select(p => p.Item.Name)],
        };
    }
}
