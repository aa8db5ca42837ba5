using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Links;
using Lanewright.Findings;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Deliverables.Report;

/// <summary>Values as the report writes them.</summary>
internal static class ReportWords
{
    /// <summary>The verdict that needs action.</summary>
    public const string Fails = "FAIL";

    /// <summary>The verdict that needs a look.</summary>
    public const string Unproven = "unproven";

    /// <summary>Says how many rows a table leaves out, where it does, and where they stand.</summary>
    public static void Left(MarkupWriter markup, int count, string where)
    {
        if (count > 0) markup.Element("p", $"{Numerals.Grouped(count)} more: {where}.");
    }

    /// <summary>A verdict.</summary>
    public static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Fail => Fails,
        Verdict.Unproven => Unproven,
        _ => Checks.Word(verdict),
    };

    /// <summary>The verdict of a comparison, which may be advice or hang on a condition.</summary>
    public static string Word(Check check)
    {
        if (check.IsAdvice) return check.Verdict == Verdict.Pass ? "advice: kept" : "advice: not kept";
        return check is { IsConditional: true, Verdict: Verdict.Pass } ? "pass, if" : Word(check.Verdict);
    }

    /// <summary>A value with its unit, or nothing.</summary>
    public static string Value(double? value, string unit) => value is { } v ? Numerals.Unit(v, unit) : "";

    /// <summary>A number for people, with gaps at the thousands.</summary>
    public static string Grouped(decimal value, int decimals = 0) => Numerals.Grouped(value, decimals);

    /// <summary>Where a finding points.</summary>
    public static string Place(Finding finding)
    {
        if (finding.Span.Source is null) return "";
        var at = finding.Span.Position;
        return $"{finding.Span.Path}:{Numerals.Whole(at.Line)}:{Numerals.Whole(at.Column)}";
    }

    /// <summary>Who sets a limit.</summary>
    public static string Source(Citation? source) => source?.ToString() ?? "";

    /// <summary>A count with the word for it.</summary>
    public static string Count(long count, string one, string many) => Numerals.Grouped(count) + " " + (count == 1 ? one : many);
}
