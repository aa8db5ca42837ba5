using Lanewright.Model.Devices;
using Lanewright.Model.Places;

namespace Lanewright.Model.Wanted;

/// <summary>A device that stands in a rack already and stays there.</summary>
/// <param name="Group">What it is.</param>
/// <param name="Rack">Its rack.</param>
/// <param name="Unit">Its lowest rack unit, from 1.</param>
public sealed record StandingDevice(DeviceGroup Group, Rack Rack, int Unit);
