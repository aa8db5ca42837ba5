using System.Collections.Immutable;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Space;

/// <summary>What stands in a rack.</summary>
/// <param name="Rack">The rack.</param>
/// <param name="Devices">Its devices from the floor up.</param>
/// <param name="UsedUnits">Rack units taken.</param>
/// <param name="Weight">Weight of devices and cards, without modules, cables and the rack itself.</param>
/// <param name="Typical">Power under a usual load, modules at their most.</param>
/// <param name="Maximum">Most power, modules included.</param>
public sealed record RackContents(
    Rack Rack, ImmutableArray<int> Devices, int UsedUnits, Mass Weight, Watts Typical, Watts Maximum)
{
    /// <summary>Rack units left.</summary>
    public int FreeUnits => Rack.Type.Units - UsedUnits;

    /// <summary>Whether it is known what each of its devices weighs.</summary>
    public required bool IsWeightKnown { get; init; }

    /// <summary>Whether it is known what each of its devices draws at the most; panels draw nothing.</summary>
    public required bool IsPowerKnown { get; init; }

    /// <summary>Weight on the floor: the rack's own counted where it is known.</summary>
    public Mass OnFloor => Weight + (Rack.Type.OwnWeight ?? default);
}
