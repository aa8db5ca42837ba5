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
    /// <param name="design">The design.</param>
    /// <param name="kept">Margin that is to be kept.</param>
    public static string Reason(LineDesign design, Decibels kept)
    {
        var verdict = design.Verdict;
        if (verdict == Verdict.Pass) return Passing(design, kept);
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
        return $"{check.Name} {Shown(value, check.Unit)} against {Shown(limit, check.Unit)}{note}";
    }

    /// <summary>A share of time in per cent, cut off and not rounded: what fails once in a million years does not work always.</summary>
    public static string Percent(Share share) => Numerals.Fixed(CutOff(share), PercentPlaces) + " %";

    /// <summary>The same as a number, for whoever reads both.</summary>
    public static double CutOff(Share share)
    {
        var whole = Math.Pow(10, PercentPlaces);
        return Math.Floor((share.Percent * whole) + (1 / whole)) / whole;
    }

    private const int PercentPlaces = 6;

    /// <summary>Lengths of lines are told in kilometres.</summary>
    private static string Shown(double value, string unit) => unit == "m" && Math.Abs(value) >= MetresInKilometre
        ? Numerals.Shown(value / MetresInKilometre, "km")
        : Numerals.Shown(value, unit);

    private const double MetresInKilometre = 1000;

    private static string Passing(LineDesign design, Decibels kept) => design.Worst?.Margin is { } margin
        ? $"{design.TypeName}: every channel has {Numerals.Shown(margin.Value, "dB")} of margin or more"
            + (kept.Value > 0 ? $", {Numerals.Shown(kept.Value, "dB")} of it to be kept" : "")
        : $"{design.TypeName} fits";
}
