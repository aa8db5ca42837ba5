namespace Lanewright.Engineering.Fabrics;

/// <summary>What a device does in a fabric.</summary>
public enum SwitchRole
{
    /// <summary>Is served.</summary>
    Host,

    /// <summary>The only tier: takes hosts and has nothing above it.</summary>
    Box,

    /// <summary>Takes hosts and has a tier above it.</summary>
    Leaf,

    /// <summary>Between leaves and cores, in a pod.</summary>
    Aggregation,

    /// <summary>Joins all leaves of a fabric of two tiers.</summary>
    Spine,

    /// <summary>Joins the pods of a fabric of three tiers.</summary>
    Core,
}
