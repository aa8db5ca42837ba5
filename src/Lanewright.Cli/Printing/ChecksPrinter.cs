using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Cli.Printing;

/// <summary>Prints comparisons as a table.</summary>
internal static class ChecksPrinter
{
    /// <summary>One row a comparison.</summary>
    public static void Print(IEnumerable<Check> checks) => Screen.Print(
        ["check", "value", "limit", "margin", "verdict", "source", "mark", "note"],
        checks.Select(c => (IReadOnlyList<string>)
        [
            c.Name + (c.End.Length > 0 ? $" ({c.End})" : ""),
            Number(c.Value, c.Unit),
            Number(c.Limit, c.Unit),
            Number(c.Margin, c.MarginUnit),
            Checks.Word(c.Verdict) + (c.IsConditional ? ", if" : c.IsAdvice ? " (advice)" : ""),
            c.Source?.ToString() ?? "",
            Marks.Name(c.Mark),
            c.Note,
        ]));

    private static string Number(double? value, string unit) => value is { } v ? Numerals.Shown(v, unit) : "";
}
