namespace Lanewright.Engineering.Fabrics;

/// <summary>One way to use a switch as a leaf: which cages take hosts and which go up, and how many uplinks are left beside so many
/// hosts.</summary>
internal sealed class LeafConfig
{
    private const int Unknown = -1;

    private readonly int[] uplinks;

    public LeafConfig(SwitchBuild build, PortUse hostPorts, PortUse upPorts, int mostHosts)
    {
        Build = build;
        HostPorts = hostPorts;
        UpPorts = upPorts;
        MostHosts = mostHosts;
        uplinks = new int[((mostHosts + hostPorts.Mode.Ways - 1) / hostPorts.Mode.Ways) + 1];
        Array.Fill(uplinks, Unknown);
    }

    public SwitchBuild Build { get; }

    public PortUse HostPorts { get; }

    public PortUse UpPorts { get; }

    /// <summary>Ports for hosts when there is no uplink.</summary>
    public int MostHosts { get; }

    /// <summary>Uplinks that can be opened beside so many ports for hosts.</summary>
    public int UplinksBeside(int hosts)
    {
        var cages = (hosts + HostPorts.Mode.Ways - 1) / HostPorts.Mode.Ways;
        if (uplinks[cages] != Unknown) return uplinks[cages];
        var taking = new PortTaking(Build.Layout);
        taking.Take(HostPorts, cages * HostPorts.Mode.Ways);
        return uplinks[cages] = taking.Take(UpPorts, int.MaxValue).Length * UpPorts.Mode.Ways;
    }
}
