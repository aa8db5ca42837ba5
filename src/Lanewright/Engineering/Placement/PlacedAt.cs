using Lanewright.Model.Places;

namespace Lanewright.Engineering.Placement;

/// <summary>Where a device stands or could stand.</summary>
/// <param name="Rack">The rack.</param>
/// <param name="Unit">Its lowest rack unit, from 1.</param>
public readonly record struct PlacedAt(Rack Rack, int Unit);
