using Lanewright.Model.Catalogues;
using Lanewright.Model.Plant;
using Lanewright.Standards;

namespace Lanewright.Engineering.Plant;

/// <summary>What the ends of trunks are made of at their panels, as it is ordered.</summary>
public static class TrunkFronts
{
    /// <summary>The type of the array cable.</summary>
    public static string CableType(TrunkGroup trunk) => trunk.Parts.FirstOrDefault(p => p.Kind == ArrayPartKind.Cable)?.Name ?? "";

    /// <summary>The type of the cassette at an end: its transition, and how the adapter at its back turns keys; empty where there is
    /// none.</summary>
    /// <param name="trunk">The trunks.</param>
    /// <param name="isFar">Which end.</param>
    public static string CassetteType(TrunkGroup trunk, bool isFar) =>
        trunk.CassetteAt(isFar) is not null && trunk.Parts.Length > 1
            ? $"{trunk.Parts[isFar ? ^1 : 0].Name}, adapter {AdapterType(trunk, isFar)}"
            : "";

    /// <summary>The adapter at the front of a panel where an array is open; null behind a cassette, which brings its own, and where the
    /// catalogue has none.</summary>
    /// <param name="catalogue">What can be bought.</param>
    /// <param name="trunk">The trunks.</param>
    /// <param name="isFar">Which end.</param>
    public static SundryModel? Adapter(Catalogue catalogue, TrunkGroup trunk, bool isFar)
    {
        if (trunk.CassetteAt(isFar) is not null) return null;
        var (connector, type) = (trunk.ConnectorAt(isFar), AdapterType(trunk, isFar));
        return catalogue.Sundries
            .Where(s => s.Coupling is { } coupling && coupling.Connector == connector && coupling.Type == type)
            .OrderBy(s => s.Price).ThenBy(s => s.Name, StringComparer.Ordinal)
            .FirstOrDefault();
    }

    private static string AdapterType(TrunkGroup trunk, bool isFar)
    {
        var adapters = trunk.Parts.Where(p => p.Kind == ArrayPartKind.Adapter).Select(p => p.Name);
        return (isFar ? adapters.LastOrDefault() : adapters.FirstOrDefault()) ?? "";
    }
}
