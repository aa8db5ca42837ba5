namespace Lanewright.Engineering.Fabrics;

/// <summary>What decides how the links between hosts and leaves are made: designs that share it share the count.</summary>
/// <param name="Kind">The kind of host.</param>
/// <param name="Port">Which of its ports.</param>
/// <param name="Build">The leaf.</param>
/// <param name="Ports">How its ports for hosts are opened.</param>
/// <param name="HostsPerLeaf">Hosts of a full leaf.</param>
/// <param name="Year">The year.</param>
internal readonly record struct EdgeKey(int Kind, int Port, SwitchBuild Build, PortUse Ports, int HostsPerLeaf, int Year);
