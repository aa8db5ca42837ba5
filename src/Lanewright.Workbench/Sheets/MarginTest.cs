using System.Text.RegularExpressions;
using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>A bound on the margin, as the filter of links takes it: <c>margin&lt;0.5</c> or <c>margin &gt;= 1 dB</c>.</summary>
/// <param name="Sign">How the margin compares with the bound.</param>
/// <param name="Bound">The bound, in dB.</param>
internal readonly partial record struct MarginTest(string Sign, double Bound)
{
    private const string Below = "<";
    private const string From = ">=";
    private const string Name = "margin";

    /// <summary>Half of the last place that margins are shown to.</summary>
    private const double Rounding = 0.005;

    /// <summary>The words of a filter; a bound is one word however it is spaced.</summary>
    public static string[] WordsOf(string filter) =>
        Spaced().Replace(filter, Name + "$1$2").Split(' ', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Whether a word is meant for a bound, whether it can be read or not.</summary>
    public static bool IsMeant(string word) => Spaced().Match(word) is { Success: true, Index: 0 };

    /// <summary>Reads a word; null when it is no such bound.</summary>
    public static MarginTest? Read(string word) => Spaced().Match(word) is { Success: true, Index: 0 } found
        && Numerals.TryReal(found.Groups[2].ValueSpan, out var bound)
            ? new MarginTest(found.Groups[1].Value, bound)
            : null;

    /// <summary>What is wrong with a filter, in words; empty when nothing is.</summary>
    public static string Trouble(string filter) => WordsOf(filter).FirstOrDefault(w => IsMeant(w) && Read(w) is null) is { } word
        ? $"'{word}' compares with no number: write {Name}, then one of < <= > >=, then decibels, such as {Name}<1."
        : "";

    /// <summary>The word for margins from one bound up to another.</summary>
    public static string Words(double from, double below) => $"{Name}{From}{Numerals.Plain(from)} {Name}{Below}{Numerals.Plain(below)}";

    /// <summary>Whether a margin is within; none is never.</summary>
    public bool Holds(double? margin) => margin is { } value && Sign switch
    {
        Below => value < Bound,
        "<=" => value <= Bound,
        ">" => value > Bound,
        From => value >= Bound,
        _ => Math.Abs(value - Bound) < Rounding,
    };

    [GeneratedRegex(@"(?<!\S)margin\s*(<=|>=|<|>|=)\s*(\S*?)(?:\s*dB)?(?!\S)", RegexOptions.IgnoreCase)]
    private static partial Regex Spaced();
}
