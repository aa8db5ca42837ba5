using Lanewright.Model.Places;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Where a device stands.</summary>
/// <param name="Rack">Its rack.</param>
/// <param name="Unit">Its lowest rack unit, from 1.</param>
public readonly record struct FabricPlace(Rack Rack, int Unit);
