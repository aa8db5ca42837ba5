namespace Lanewright.Engineering.Placement;

/// <summary>A device that stands elsewhere in the better placement, or stays.</summary>
/// <param name="Device">The device.</param>
/// <param name="From">Where it stands.</param>
/// <param name="To">Where it would stand.</param>
public readonly record struct DeviceMove(int Device, PlacedAt From, PlacedAt To)
{
    /// <summary>Whether it would stand in another rack.</summary>
    public bool ChangesRack => From.Rack.Index != To.Rack.Index;
}
