namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts of a network of diameter two.</summary>
/// <param name="LinksPerSwitch">Links of each switch to others.</param>
/// <param name="Switches">Switches.</param>
/// <param name="HostsPerSwitch">Hosts of each.</param>
/// <param name="Hosts">Hosts.</param>
public sealed record DiameterTwoCounts(int LinksPerSwitch, long Switches, int HostsPerSwitch, long Hosts);
