using Lanewright.Model.Places;

namespace Lanewright.Engineering.Placement;

/// <summary>A rack that has room for a device and bears it, as far as is known.</summary>
/// <param name="Rack">The rack.</param>
/// <param name="Cost">What the links of the device would cost there.</param>
/// <param name="Gaps">What is not known of whether it bears it.</param>
public readonly record struct RackOffer(Rack Rack, double Cost, BearingGaps Gaps);
