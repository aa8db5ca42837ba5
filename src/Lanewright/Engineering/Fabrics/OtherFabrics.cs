namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts of fabrics that are no folded Clos, and bounds on any fabric.</summary>
public static class OtherFabrics
{
    /// <summary>Crosspoints of one square matrix.</summary>
    public static long CrossbarCrosspoints(long ports) => checked(ports * ports);

    /// <summary>Crosspoints of the smallest network of three stages that never blocks, with square root n ports to a first matrix:
    /// (2 root n - 1) * 3n, rounded.</summary>
    public static long ThreeStageCrosspoints(long ports) =>
        checked((long)Math.Round(((2 * Math.Sqrt(ports)) - 1) * 3 * ports));

    /// <summary>Groups of switches that are all joined to each other.</summary>
    /// <param name="hostsPerSwitch">Hosts of each switch.</param>
    /// <param name="switchesPerGroup">Switches of a group, joined each to each.</param>
    /// <param name="globalPerSwitch">Links of each switch to other groups.</param>
    public static GroupCounts Groups(int hostsPerSwitch, int switchesPerGroup, int globalPerSwitch)
    {
        var groups = (switchesPerGroup * globalPerSwitch) + 1;
        var switches = (long)groups * switchesPerGroup;
        return new GroupCounts(
            groups, switches, switches * hostsPerSwitch, hostsPerSwitch + switchesPerGroup - 1 + globalPerSwitch);
    }

    /// <summary>Switches any two of which are at most two links apart, on the graphs of McKay, Miller and Siran.</summary>
    /// <param name="q">A prime power of the form 4w + 1, 4w or 4w - 1.</param>
    public static DiameterTwoCounts DiameterTwo(int q)
    {
        var delta = (q % 4) switch { 1 => 1, 0 => 0, 3 => -1, _ => throw new ArgumentOutOfRangeException(nameof(q)) };
        var radix = ((3 * q) - delta) / 2;
        var hosts = (radix + 1) / 2;
        var switches = 2L * q * q;
        return new DiameterTwoCounts(radix, switches, hosts, switches * hosts);
    }

    /// <summary>Switches joined at random, each with as many links to others.</summary>
    /// <param name="switches">Switches.</param>
    /// <param name="radix">Ports of each.</param>
    /// <param name="toSwitches">Ports of each that go to other switches.</param>
    public static RandomCounts Random(int switches, int radix, int toSwitches) => new(
        (long)switches * (radix - toSwitches), (long)switches * toSwitches / 2, LeastMeanDistance(switches, toSwitches));

    /// <summary>The most switches a network can have, by links of each and links between the farthest two.</summary>
    public static long MostSwitches(int links, int diameter)
    {
        var (sum, reach) = (1L, (long)links);
        for (var step = 0; step < diameter; step++)
        {
            sum = checked(sum + reach);
            reach = checked(reach * (links - 1));
        }
        return sum;
    }

    /// <summary>A network of racks with two uplinks each, aggregation switches, and intermediate switches that join all of those.</summary>
    /// <param name="aggregationPorts">Ports of an aggregation switch, half of them up.</param>
    /// <param name="intermediatePorts">Ports of an intermediate switch.</param>
    /// <param name="hostsPerRack">Hosts of a rack.</param>
    public static RackTreeCounts RackTree(int aggregationPorts, int intermediatePorts, int hostsPerRack)
    {
        var racks = (long)aggregationPorts * intermediatePorts / 4;
        return new RackTreeCounts(
            racks * hostsPerRack, racks, intermediatePorts, aggregationPorts / 2, (long)intermediatePorts * aggregationPorts / 2);
    }

    /// <summary>No network of so many switches with so many links each has a smaller mean distance: each switch reaches as many others in
    /// each step as it can.</summary>
    private static double LeastMeanDistance(int switches, int links)
    {
        var (left, reach, distance, sum) = (switches - 1L, (long)links, 1, 0L);
        while (left > 0)
        {
            var now = Math.Min(left, reach);
            sum += now * distance++;
            left -= now;
            reach = checked(reach * (links - 1));
        }
        return (double)sum / (switches - 1);
    }
}
