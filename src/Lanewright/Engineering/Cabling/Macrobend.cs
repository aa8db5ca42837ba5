using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Cabling;

/// <summary>What bends cost in single-mode fibre.</summary>
public static class Macrobend
{
    /// <summary>Loss of one full turn; null where the radius is below all that are tabled, or no limit is. Between two tabled radii the
    /// smaller one is taken, which costs more.</summary>
    /// <param name="standards">The limits.</param>
    /// <param name="category">Category of the fibre, such as G.657.A1.</param>
    /// <param name="radius">Radius of the turn.</param>
    /// <param name="wavelength">Wavelength of the light: up to 1550 nm the limits at 1550 nm are taken, beyond it those at 1625 nm. Bends
    /// cost more the longer the wave is.</param>
    public static Known<Decibels>? OfTurn(StandardsLibrary standards, string category, Length radius, Wavelength wavelength)
    {
        MacrobendLimit? row = null;
        foreach (var limit in standards.Macrobends)
            if (limit.Category == category && limit.Radius <= radius && (row is null || limit.Radius > row.Radius)) row = limit;
        if (row is null) return null;
        // Where nothing is limited at the shorter wave, the longer one's limit holds for it all the more.
        var loss = wavelength.Nanometres <= ShortWave ? row.At1550 ?? row.At1625 : row.At1625;
        return loss?.As(l => Decibels.From(l.Value / row.Turns));
    }

    private const double ShortWave = 1550;
}
