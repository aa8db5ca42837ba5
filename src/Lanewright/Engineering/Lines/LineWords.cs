using Lanewright.Engineering.Links;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>Lines in words: names of schemes, and why one is refused.</summary>
public static class LineWords
{
    private const int MostReasons = 3;

    /// <summary>The name of a scheme.</summary>
    public static string Name(LineScheme scheme) => scheme switch
    {
        LineScheme.Grey => "grey",
        LineScheme.CoarseDirect => "cwdm-direct",
        LineScheme.DenseDirect => "dwdm-direct",
        LineScheme.Coherent => "coherent",
        LineScheme.Booster => "coherent-booster",
        LineScheme.Preamplifier => "coherent-preamplifier",
        LineScheme.BoosterAndPreamplifier => "coherent-booster-preamplifier",
        _ => "coherent-in-line",
    };

    /// <summary>What decides about a design, in a line.</summary>
    public static string Reason(LineDesign design)
    {
        var verdict = design.Verdict;
        if (verdict == Verdict.Pass) return Passing(design);
        var deciding = design.Checks.Where(c => c.Verdict == verdict && !c.IsAdvice).Take(MostReasons).Select(Describe);
        var with = design.TypeName.Length > 0 ? design.TypeName + ": " : "";
        return with + string.Join("; ", deciding);
    }

    /// <summary>A comparison in words.</summary>
    public static string Describe(Check check)
    {
        if (check.Value is not { } value || check.Limit is not { } limit)
            return check.Unit.Length > 0 ? $"{check.Name}: no limit is known" : check.Note;
        var note = check.Note.Length > 0 ? $" ({check.Note})" : "";
        return $"{check.Name} {Numerals.Shown(value, check.Unit)} against {Numerals.Shown(limit, check.Unit)}{note}";
    }

    private static string Passing(LineDesign design) => design.Worst?.Margin is { } margin
        ? $"{design.TypeName}: every channel has {Numerals.Shown(margin.Value, "dB")} of margin or more"
        : $"{design.TypeName} fits";
}
