using System.Collections.Immutable;
using System.Text;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Fabrics;

/// <summary>Writes values the way plans hold them, so that they read back as what they were.</summary>
internal static class PlanText
{
    private const string Plain = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_./";

    private static readonly ImmutableArray<string> Words = ["yes", "no", "true", "false", "on", "off", "null", "y", "n"];

    /// <summary>A name or text, in quotes where it could be read as anything else.</summary>
    public static string Name(string text)
    {
        var isPlain = text.Length > 0 && char.IsAsciiLetter(text[0]) && text.All(c => Plain.Contains(c, StringComparison.Ordinal))
            && !Words.Contains(text.ToLowerInvariant());
        return isPlain ? text : Quoted(text);
    }

    /// <summary>Several names: one by itself, more in a list.</summary>
    public static string Names(IReadOnlyCollection<string> texts) =>
        texts.Count == 1 ? Name(texts.First()) : "[" + string.Join(", ", texts.Select(Name)) + "]";

    /// <summary>A length in metres, to the micrometre.</summary>
    public static string Length(Length length) => Numerals.Exact(Math.Round(length.Metres, 6)) + " m";

    /// <summary>A loss.</summary>
    public static string Loss(Decibels loss) => Numerals.Exact(loss.Value) + " dB";

    /// <summary>A share.</summary>
    public static string Share(Share share) => Numerals.Exact(Math.Round(share.Percent, 9)) + " %";

    /// <summary>A time of many hours.</summary>
    public static string Hours(Duration time) => Number(time.Hours) + " h";

    /// <summary>A power.</summary>
    public static string Power(Watts power) => Number(power.Value) + " W";

    /// <summary>A weight.</summary>
    public static string Weight(Mass mass) => Number(mass.Kilograms) + " kg";

    /// <summary>A number to the ninth place, where the last places are rounding.</summary>
    public static string Number(double value) => Numerals.Exact(Math.Round(value, 9));

    /// <summary>Yes or no.</summary>
    public static string Switch(bool isOn) => isOn ? "yes" : "no";

    /// <summary>Whole numbers as ranges: <c>1..4, 7</c>.</summary>
    public static string Ranges(IEnumerable<int> ascending)
    {
        var parts = new List<string>();
        var (from, to) = (int.MinValue, int.MinValue);
        foreach (var number in ascending)
        {
            if (number == to + 1 && from != int.MinValue)
            {
                to = number;
                continue;
            }
            if (from != int.MinValue) parts.Add(Range(from, to));
            (from, to) = (number, number);
        }
        if (from != int.MinValue) parts.Add(Range(from, to));
        return string.Join(", ", parts);
    }

    private static string Range(int from, int to) =>
        from == to ? Numerals.Whole(from) : Numerals.Whole(from) + ".." + Numerals.Whole(to);

    private static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var c in text)
        {
            if (c is '"' or '\\') quoted.Append('\\').Append(c);
            else if (c < ' ' || c == '\u007F') quoted.Append("\\u").Append(((int)c).ToString("x4"));
            else quoted.Append(c);
        }
        return quoted.Append('"').ToString();
    }
}
