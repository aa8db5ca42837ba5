namespace Lanewright.Model.Wanted;

/// <summary>What a fabric looks like.</summary>
public enum FabricShape
{
    /// <summary>One switch of fixed form takes every host port.</summary>
    FixedBox,

    /// <summary>One chassis with cards takes every host port.</summary>
    Chassis,

    /// <summary>Two switches, half the ports of every host on each, joined by a few links.</summary>
    CollapsedPair,

    /// <summary>Leaves, and spines that join every leaf.</summary>
    LeafSpine,

    /// <summary>Pods of leaves and aggregation switches, and cores that join the pods.</summary>
    ThreeTier,

    /// <summary>Fabrics side by side that never meet: port i of every host in fabric i.</summary>
    Planes,

    /// <summary>Leaf i of a unit takes port i of every server of it, so that alike accelerators are one hop apart.</summary>
    Rails,
}
