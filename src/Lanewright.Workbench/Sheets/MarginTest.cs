using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>A bound on the margin, as the filter of links takes it: <c>margin&lt;0.5</c> or <c>margin&gt;=1</c>.</summary>
/// <param name="IsBelow">Whether the margin has to be less than the bound rather than no less.</param>
/// <param name="Bound">The bound, in dB.</param>
internal readonly record struct MarginTest(bool IsBelow, double Bound)
{
    private const string Below = "margin<";
    private const string From = "margin>=";

    /// <summary>Reads a word; null when it is no such bound.</summary>
    public static MarginTest? Read(string word)
    {
        var sign = word.StartsWith(Below, StringComparison.Ordinal) ? Below : word.StartsWith(From, StringComparison.Ordinal) ? From : "";
        if (sign.Length == 0 || !Numerals.TryReal(word.AsSpan(sign.Length), out var bound)) return null;
        return new MarginTest(sign == Below, bound);
    }

    /// <summary>The word for margins from one bound up to another.</summary>
    public static string Words(double from, double below) => $"{From}{Numerals.Plain(from)} {Below}{Numerals.Plain(below)}";

    /// <summary>Whether a margin is within; none is never.</summary>
    public bool Holds(double? margin) => margin is { } value && (IsBelow ? value < Bound : value >= Bound);
}
