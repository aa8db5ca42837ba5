using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>A network with several things down at once, under one demand: what its links then carry, and who is lost.</summary>
public sealed class DamagedNetwork
{
    private readonly NetworkStudy network;
    private readonly LinkLoads loads;
    private readonly FabricGraph hurt;
    private readonly OutageEffect effect;
    private readonly Share[] fullest;
    private readonly int[] left;

    private DamagedNetwork(NetworkStudy network, LinkLoads loads, FabricGraph hurt, OutageEffect effect)
    {
        (this.network, this.loads, this.hurt, this.effect) = (network, loads, hurt, effect);
        fullest = new Share[network.Map.Graph.Links.Length];
        left = new int[fullest.Length];
        for (var part = 0; part < hurt.Links.Length; part++)
        {
            var link = hurt.OriginOfLink(part);
            if (loads.Utilisation(part) > fullest[link]) fullest[link] = loads.Utilisation(part);
            if (IsUp(hurt.Links[part])) left[link] += hurt.Links[part].Count;
        }
    }

    /// <summary>Hosts that are up and cannot reach the largest part of what they reached before.</summary>
    public int HostsCut => effect.MembersCut;

    /// <summary>Hosts that are down themselves.</summary>
    public int HostsDown => effect.MembersDown;

    /// <summary>Traffic lost, in Gb/s: without a path, or of hosts that are down.</summary>
    public double LostGigabits => effect.LostGigabits;

    /// <summary>How full the fullest link between switches is.</summary>
    public Share MaxUtilisation => Fullest(l => !network.Map.IsAccess(network.Map.Graph.Links[l]));

    /// <summary>How full the fullest host link is.</summary>
    public Share MaxAccessUtilisation => Fullest(l => network.Map.IsAccess(network.Map.Graph.Links[l]));

    /// <summary>Looks at a demand with something down; null without traffic, and where the ideal split is too large to solve.</summary>
    /// <param name="study">The demand.</param>
    /// <param name="outage">All that is down.</param>
    public static DamagedNetwork? Of(DemandStudy study, Outage outage)
    {
        var (network, rule) = (study.Fabric, study.Fabric.Rule);
        if (study.Traffic is not { } traffic) return null;
        if (new OutageTrial(network.Map.Inside, traffic, rule).Of(outage) is not { } effect) return null;
        // The ideal split must not think itself done when the fullest link is one that a host fills by itself.
        var hurt = (rule == SplitRule.Ideal ? network.InsideOrAll : network.Map.Graph).Without(outage);
        return LoadSolver.Of(hurt, traffic, rule) is { } loads ? new DamagedNetwork(network, loads, hurt, effect) : null;
    }

    /// <summary>How full the fuller direction of a link of the whole network is; the fullest part where members of a bundle
    /// differ.</summary>
    public Share Utilisation(int link) => fullest[link];

    /// <summary>How many of the physical links of a link are left.</summary>
    public int Left(int link) => left[link];

    /// <summary>Members of a node that are up: 1 or 0 for a switch.</summary>
    public int Up(int node) => Enumerable.Range(0, hurt.Nodes.Length)
        .Where(n => hurt.OriginOfNode(n) == node && !hurt.IsDown(n)).Sum(n => Math.Max(1, hurt.Nodes[n].Members));

    /// <summary>The fullest links, fullest first; host links only where they are asked for more than they carry.</summary>
    public ImmutableArray<BusyLink> Busiest(int most) =>
    [
        .. Enumerable.Range(0, fullest.Length)
            .Where(l => fullest[l] > (network.Map.IsAccess(network.Map.Graph.Links[l]) ? DemandStudy.Full : default))
            .OrderByDescending(l => Math.Round(fullest[l].Value, DemandStudy.Places)).ThenBy(l => l)
            .Take(most)
            .Select(Busy),
    ];

    private BusyLink Busy(int link)
    {
        var part = Enumerable.Range(0, hurt.Links.Length).Where(p => hurt.OriginOfLink(p) == link).MaxBy(p => loads.Utilisation(p));
        var ends = network.Map.Graph.Links[link];
        var (from, to) = loads.GigabitsFromB(part) > loads.GigabitsFromA(part) ? (ends.B, ends.A) : (ends.A, ends.B);
        return new BusyLink(link, from, to, ends.Rate, left[link], fullest[link].Value * ends.Rate.Gigabits * left[link], fullest[link],
            left[link]);
    }

    private bool IsUp(FabricLink part) => part.Count > 0 && !hurt.IsDown(part.A) && !hurt.IsDown(part.B);

    private Share Fullest(Func<int, bool> counts) => Enumerable.Range(0, fullest.Length).Where(counts).Select(l => fullest[l])
        .DefaultIfEmpty().Max();
}
