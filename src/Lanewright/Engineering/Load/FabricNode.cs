namespace Lanewright.Engineering.Load;

/// <summary>A node of a fabric: a switch, or a bundle of hosts that are attached alike. Hosts send and receive and never
/// forward.</summary>
/// <param name="Kind">Nodes of different kinds are never taken for alike; any number.</param>
/// <param name="Members">Hosts in the bundle; 0 for a switch.</param>
public readonly record struct FabricNode(int Kind, int Members)
{
    /// <summary>Whether the node is a bundle of hosts.</summary>
    public bool IsTerminal => Members > 0;

    /// <summary>A switch of a kind.</summary>
    public static FabricNode Switch(int kind) => new(kind, 0);

    /// <summary>A bundle of hosts of a kind.</summary>
    public static FabricNode Hosts(int kind, int members) => new(kind, members);
}
