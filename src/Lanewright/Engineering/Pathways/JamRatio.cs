using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Pathways;

/// <summary>Whether three cables in a duct may wedge side by side.</summary>
public static class JamRatio
{
    /// <summary>Cables that may wedge.</summary>
    internal const int Cables = 3;

    /// <summary>Inside diameter of a duct over that of its cables, taken as alike; null where it does not hold three of known
    /// diameter.</summary>
    public static double? Of(SegmentFill fill)
    {
        if (!fill.Pathway.IsDuct || fill.Cables != Cables || fill.Unknown > 0) return null;
        var alike = Math.Sqrt(fill.SquareMillimetres / Cables / SegmentFill.Round(OneMillimetre));
        return Of(fill.Pathway.Width, Length.FromMillimetres(alike));
    }

    /// <summary>Inside diameter over outside diameter.</summary>
    public static double Of(Length inside, Length cable) => inside.Metres / cable.Metres;

    /// <summary>Whether a duct is of the width at which three cables wedge.</summary>
    public static bool MayJam(SegmentFill fill, StandardsLibrary standards) => Of(fill) is { } ratio && MayJam(ratio, standards);

    /// <summary>Whether three cables wedge at a ratio.</summary>
    public static bool MayJam(double ratio, StandardsLibrary standards) =>
        !Rounding.IsBelow(ratio, standards.Facility("duct", "jam-from").Value)
        && !Rounding.IsAbove(ratio, standards.Facility("duct", "jam-to").Value);

    private static readonly Length OneMillimetre = Length.FromMillimetres(1);
}
