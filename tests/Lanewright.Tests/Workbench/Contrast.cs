using System.Globalization;

namespace Lanewright.Tests.Workbench;

/// <summary>Contrast of two colours as WCAG 2.2 defines it: relative luminance of sRGB, and the ratio of both with 0.05 added.</summary>
internal static class Contrast
{
    /// <summary>The least contrast of text at level AA, success criterion 1.4.3.</summary>
    public const double LeastOfText = 4.5;

    /// <summary>The least contrast of what is no text, success criterion 1.4.11.</summary>
    public const double LeastOfShapes = 3;

    /// <summary>The ratio of two colours, each as <c>#rrggbb</c>.</summary>
    public static double Of(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour) =>
        (0.2126 * Channel(colour, 1)) + (0.7152 * Channel(colour, 3)) + (0.0722 * Channel(colour, 5));

    private static double Channel(string colour, int at)
    {
        var value = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
    }
}
