using Lanewright.Model.Catalogues;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Pathways;

/// <summary>What a metre of cable weighs.</summary>
public static class CableWeight
{
    private const double MetresInKilometre = 1000;
    private const double KilogramsOfCubicMetre = 1000;
    private const double SquareMetre = 1e-6;

    /// <summary>Kilograms a metre: as stated, else by diameter and the density of its kind; null where nobody states its
    /// diameter.</summary>
    public static Known<double>? AMetreOf(CableItem cable, StandardsLibrary standards)
    {
        if (cable.WeightPerKilometre is { } stated)
            return new Known<double>(stated.Kilograms / MetresInKilometre, new Citation("cable data sheet", "", "", MarkOf(cable)));
        if (cable.Diameter.Metres <= 0) return null;
        var density = standards.Facility(KindOf(cable), "density");
        return density.As(d => d * KilogramsOfCubicMetre * SegmentFill.Round(cable.Diameter) * SquareMetre);
    }

    private static Mark MarkOf(CableItem cable) => cable is AssemblyModel assembly ? CatalogueFacts.MarkOf(assembly) : cable.PriceMark;

    private static string KindOf(CableItem cable) => cable switch
    {
        AssemblyModel { Medium: CableMedium.Dac or CableMedium.Aec } => "cable-twinax",
        CordModel { IsTwistedPair: true } => "cable-pair",
        _ => "cable-glass",
    };
}
