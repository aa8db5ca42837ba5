using Lanewright.Model.Devices;

namespace Lanewright.Engineering.Fabrics;

/// <summary>One way to use a switch as a leaf: which cages take hosts and which go up, and how many uplinks are left beside so many
/// hosts.</summary>
internal sealed class LeafConfig
{
    private const int Unknown = -1;

    private readonly int[] uplinks;
    private readonly bool isPlain;
    private readonly bool isShared;
    private readonly int upCages;

    public LeafConfig(SwitchBuild build, PortUse hostPorts, PortUse upPorts, int mostHosts)
    {
        Floors = new double[mostHosts + 1];
        Array.Fill(Floors, double.NaN);
        Build = build;
        HostPorts = hostPorts;
        UpPorts = upPorts;
        MostHosts = mostHosts;
        uplinks = new int[hostPorts.CagesFor(mostHosts) + 1];
        Array.Fill(uplinks, Unknown);
        isPlain = IsPlain(build.Layout, hostPorts, upPorts);
        isShared = ReferenceEquals(hostPorts.Cage, upPorts.Cage);
        upCages = build.Layout.Slots.Count(s => ReferenceEquals(s.Cage, upPorts.Cage));
    }

    public SwitchBuild Build { get; }

    public PortUse HostPorts { get; }

    public PortUse UpPorts { get; }

    /// <summary>What the wanted ratio asks between its two rates.</summary>
    public RatioStep Step { get; init; }

    /// <summary>Whether it stands in racks of its own, or of upper tiers, rather than above its hosts.</summary>
    public bool IsApart { get; init; }

    /// <summary>Ports for hosts when there is no uplink.</summary>
    public int MostHosts { get; }

    /// <summary>What leaves cost at least whatever stands above: with as many hosts as the ratio allows; infinite where it allows
    /// none.</summary>
    public double Least { get; set; }

    /// <summary>The most hosts of a leaf that the ratio allows, whatever stands above; 0 where it allows none.</summary>
    public int MostUseful { get; set; }

    /// <summary>The most hosts that leave uplinks enough for the ratio, by the number of upper switches, as far as anybody asked.</summary>
    public Dictionary<int, int> Fullest { get; } = [];

    /// <summary>What leaves with so many hosts each cost at least; not a number where nobody asked yet.</summary>
    public double[] Floors { get; }

    /// <summary>The most ports for hosts that leave room for so many uplinks.</summary>
    public int HostsBeside(int needed)
    {
        var (low, high) = (0, MostHosts);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (UplinksBeside(middle) >= needed) low = middle;
            else high = middle - 1;
        }
        return low;
    }

    /// <summary>Uplinks that can be opened beside so many ports for hosts.</summary>
    public int UplinksBeside(int hosts)
    {
        var cages = HostPorts.CagesFor(hosts);
        if (isPlain) return (upCages - (isShared ? cages : 0)) * UpPorts.Mode.Ways;
        if (uplinks[cages] != Unknown) return uplinks[cages];
        var taking = new PortTaking(Build.Layout);
        taking.Take(HostPorts, cages * HostPorts.Mode.Ways);
        return uplinks[cages] = taking.Take(UpPorts, int.MaxValue).Length * UpPorts.Mode.Ways;
    }

    /// <summary>Whether a cage taken costs that cage and nothing else: no neighbour, no block of one rate, no ceiling that
    /// could bind.</summary>
    private static bool IsPlain(CageLayout layout, PortUse host, PortUse up)
    {
        if (host.Cage.NeighbourLost.Contains(host.Mode) || up.Cage.NeighbourLost.Contains(up.Mode)) return false;
        if (host.Cage.RateGroup > 1 || up.Cage.RateGroup > 1) return false;
        return layout.Ceilings.All(c => layout.Slots.Skip(c.Start).Take(c.Count).Sum(s => Math.Max(
            ReferenceEquals(s.Cage, host.Cage) ? host.Mode.Ways : 0, ReferenceEquals(s.Cage, up.Cage) ? up.Mode.Ways : 0)) <= c.Most);
    }
}
