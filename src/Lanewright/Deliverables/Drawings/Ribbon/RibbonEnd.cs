using System.Collections.Immutable;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>What a ribbon shows of one end: a cage with its ports, what sits in it, and the places where the cable begins.</summary>
internal sealed record RibbonEnd
{
    /// <summary>Its name in the drawing: A, B, or B1 and so on.</summary>
    public required string Name { get; init; }

    /// <summary>Names of its ports; one empty name when the cage is not split.</summary>
    public required ImmutableArray<string> Ports { get; init; }

    /// <summary>Electrical lanes of each port in each direction; 0 where the cable goes straight into the port.</summary>
    public required int LanesPerPort { get; init; }

    /// <summary>Whether a module or the end of an assembly sits in the cage.</summary>
    public required EndBody Body { get; init; }

    /// <summary>What it does to the lanes; null for nothing.</summary>
    public LaneBlock? Block { get; init; }

    /// <summary>Where the cable begins.</summary>
    public required PlugLayout Plug { get; init; }

    /// <summary>Whether several wavelengths are put on one fibre here.</summary>
    public bool Combines => Plug.Rows.Any(r => r.Lanes.Length > 1) && Body == EndBody.Module;
}
