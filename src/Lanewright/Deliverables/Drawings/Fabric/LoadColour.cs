using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>Colours of loads, from light yellow for idle to dark blue for full: a helix in OKLab whose lightness and hue fall evenly at one
/// chroma, so that equal steps of load are equal steps for the eye. Lightness alone tells the order, whatever colours the eye tells apart.
/// What is over its limit has the accent of the house.</summary>
public static class LoadColour
{
    /// <summary>Steps the scale has; in between the nearest is taken.</summary>
    public const int Steps = 20;

    private const double LightIdle = 0.90;
    private const double LightFull = 0.32;
    private const double Chroma = 0.085;
    private const double HueIdle = 100;
    private const double HueFull = 265;
    private static readonly string[] Scale = [.. Enumerable.Range(0, Steps + 1).Select(i => Hex(i / (double)Steps))];

    /// <summary>The colour of a utilisation: that of full for everything from full up.</summary>
    public static string Of(Share utilisation) => Scale[(int)Math.Round(Math.Clamp(utilisation.Value, 0, 1) * Steps)];

    private static string Hex(double part)
    {
        var hue = (HueIdle + ((HueFull - HueIdle) * part)) * Math.PI / 180;
        var (red, green, blue) = LinearRgb(LightIdle + ((LightFull - LightIdle) * part), Chroma * Math.Cos(hue), Chroma * Math.Sin(hue));
        return "#" + Byte(red) + Byte(green) + Byte(blue);
    }

    /// <summary>From OKLab to linear sRGB, by the matrices published with OKLab in 2020.</summary>
    private static (double Red, double Green, double Blue) LinearRgb(double light, double a, double b)
    {
        var l = Math.Pow(light + (0.3963377774 * a) + (0.2158037573 * b), 3);
        var m = Math.Pow(light - (0.1055613458 * a) - (0.0638541728 * b), 3);
        var s = Math.Pow(light - (0.0894841775 * a) - (1.2914855480 * b), 3);
        return (
            (4.0767416621 * l) - (3.3077115913 * m) + (0.2309699292 * s),
            (-1.2684380046 * l) + (2.6097574011 * m) - (0.3413193965 * s),
            (-0.0041960863 * l) - (0.7034186147 * m) + (1.7076147010 * s));
    }

    /// <summary>The transfer of IEC 61966-2-1 and two digits.</summary>
    private static string Byte(double linear)
    {
        var value = Math.Clamp(linear, 0, 1);
        var coded = value <= 0.0031308 ? 12.92 * value : (1.055 * Math.Pow(value, 1 / 2.4)) - 0.055;
        return ((int)Math.Round(coded * 255)).ToString("x2", System.Globalization.NumberFormatInfo.InvariantInfo);
    }
}
