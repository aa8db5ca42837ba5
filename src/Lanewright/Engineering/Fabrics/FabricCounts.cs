using System.Collections.Immutable;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts of fabrics from the radix alone, without a catalogue. Counts beyond any building raise an overflow.</summary>
public static class FabricCounts
{
    /// <summary>The largest folded Clos of switches alike.</summary>
    /// <param name="radix">Ports of each switch, all of one rate, after breakout.</param>
    /// <param name="tiers">Tiers of switches, from 1.</param>
    /// <param name="oversubscription">The ratio of each tier from the hosts up; the last holds above it; empty for one to one.</param>
    public static FoldedClos FoldedClos(int radix, int tiers, ImmutableArray<Ratio> oversubscription = default) =>
        throw new NotSupportedException();

    /// <summary>How a leaf's ports are shared between hosts and uplinks of the same rate: the most hosts at a ratio.</summary>
    public static LeafSplit Split(int radix, Ratio ratio) => throw new NotSupportedException();

    /// <summary>The same by lanes, where hosts and uplinks use different numbers of lanes.</summary>
    public static LeafSplit Split(int lanes, int lanesDown, int lanesUp, Ratio ratio) => throw new NotSupportedException();

    /// <summary>The largest fabric of two tiers with several links of each leaf to each spine.</summary>
    public static TwoTierCounts TwoTierMost(int leafRadix, int spineRadix, Ratio ratio, int parallel = 1) =>
        throw new NotSupportedException();

    /// <summary>The fewest switches of two tiers for a number of host ports; null when no number of leaves and spines reaches it.</summary>
    /// <param name="hostPorts">Ports of hosts.</param>
    /// <param name="leafRadix">Ports of a leaf.</param>
    /// <param name="spineRadix">Ports of a spine.</param>
    /// <param name="ratio">Oversubscription of a leaf.</param>
    public static TwoTierCounts? TwoTierFor(int hostPorts, int leafRadix, int spineRadix, Ratio ratio) =>
        throw new NotSupportedException();

    /// <summary>A generalised fat tree by its branching: nodes and links of each level.</summary>
    /// <param name="children">Children of a node of level 1 upward.</param>
    /// <param name="parents">Parents of a node of level 0 upward.</param>
    public static TreeCounts Tree(ImmutableArray<int> children, ImmutableArray<int> parents) => throw new NotSupportedException();

    /// <summary>Ports that silicon gives when its lanes are shared out.</summary>
    /// <param name="lanes">Lanes of the silicon.</param>
    /// <param name="laneRate">Rate of a lane.</param>
    /// <param name="portRate">Rate of a port; not below the lane's unless the lane runs slower.</param>
    /// <param name="portLimit">Ports the silicon can have; null when lanes are the only limit.</param>
    public static BreakoutCounts Breakout(int lanes, BitRate laneRate, BitRate portRate, int? portLimit = null) =>
        throw new NotSupportedException();

    /// <summary>A chassis as the folded Clos inside it.</summary>
    /// <param name="chipRadix">Ports of each chip.</param>
    /// <param name="frontPorts">Ports at the front of all cards together.</param>
    public static ChassisCounts Chassis(int chipRadix, int frontPorts) => throw new NotSupportedException();

    /// <summary>Rails: leaf i of a unit takes accelerator i of each server.</summary>
    /// <param name="radix">Ports of each switch.</param>
    /// <param name="rails">Accelerators of each server.</param>
    /// <param name="tiers">1 for switches that never meet, 2 with spines.</param>
    public static RailCounts Rails(int radix, int rails, int tiers = 2) => throw new NotSupportedException();

    /// <summary>Planes of two tiers side by side, one for each port of a host; null when one plane cannot take the hosts.</summary>
    /// <param name="hosts">Hosts.</param>
    /// <param name="hostPorts">Ports of each, and so planes.</param>
    /// <param name="radix">Ports of each switch, after breakout.</param>
    /// <param name="ratio">Oversubscription of a leaf.</param>
    public static PlaneCounts? Planes(int hosts, int hostPorts, int radix, Ratio ratio) => throw new NotSupportedException();
}
