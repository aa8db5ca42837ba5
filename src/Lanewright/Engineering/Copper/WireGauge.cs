using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Copper;

/// <summary>The gauge of a passive assembly, and why it was taken where nobody stated it.</summary>
/// <param name="Awg">American wire gauge; a smaller number is a thicker wire.</param>
/// <param name="Assumption">Why it was taken; empty when it was stated.</param>
public sealed record WireGauge(int Awg, string Assumption = "")
{
    /// <summary>The worst case of a length nobody states the wire of: the thinnest wire a catalogue has for the type at that length; where
    /// it has none so long, the thickest that is tabled, because nothing thinner would be made.</summary>
    public static WireGauge WorstSold(StandardsLibrary standards, Catalogue catalogue, CopperType type, Length length)
    {
        var sold = catalogue.Assemblies
            .Where(a => a.Type?.Name == type.Name && a.OrderedFor(length) is not null)
            .Select(a => a.Gauge)
            .DefaultIfEmpty(0)
            .Max();
        return sold > 0
            ? new WireGauge(sold, "assumed as the thinnest wire sold at this length")
            : new WireGauge(standards.TwinaxLosses.Min(t => t.Gauge), "assumed as the thickest wire tabled; none is sold at this length");
    }
}
