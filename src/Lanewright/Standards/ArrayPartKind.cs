namespace Lanewright.Standards;

/// <summary>What a part of a fibre way is.</summary>
public enum ArrayPartKind
{
    /// <summary>A trunk or cord with an array connector at both ends.</summary>
    Cable,

    /// <summary>What two array connectors meet in.</summary>
    Adapter,

    /// <summary>A cord with a duplex connector at both ends.</summary>
    Cord,

    /// <summary>A cassette or fan-out: duplex connectors on one side, an array on the other.</summary>
    Transition,
}
