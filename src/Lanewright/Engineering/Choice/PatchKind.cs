namespace Lanewright.Engineering.Choice;

/// <summary>What a cord on a patched way joins, walked from the first end of the link.</summary>
public enum PatchKind
{
    /// <summary>Duplex connectors at both ends.</summary>
    Duplex,

    /// <summary>Arrays at both ends.</summary>
    Array,

    /// <summary>A fan-out met at its array: the ports of a split cage part here.</summary>
    Split,

    /// <summary>A fan-out met at its legs: the ports of a split cage come together here.</summary>
    Merge,
}
