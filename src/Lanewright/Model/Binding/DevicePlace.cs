namespace Lanewright.Model.Binding;

/// <summary>Where a device stands.</summary>
/// <param name="Rack">Index of its rack, or -1.</param>
/// <param name="Unit">Its lowest rack unit, or 0.</param>
/// <param name="NumberInRack">Its number among those of its group in its rack, from 1.</param>
internal readonly record struct DevicePlace(int Rack, int Unit, int NumberInRack);
