namespace Lanewright.Engineering.Placement;

/// <summary>What nobody states, so that it stays open whether a rack bears what would stand in it.</summary>
[Flags]
public enum BearingGaps
{
    /// <summary>All that its limits ask for is known.</summary>
    None = 0,

    /// <summary>What a device weighs.</summary>
    DeviceWeight = 1,

    /// <summary>What the empty rack weighs.</summary>
    RackWeight = 2,

    /// <summary>What a device draws at the most.</summary>
    Power = 4,
}
