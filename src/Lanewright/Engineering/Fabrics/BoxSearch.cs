using System.Collections.Immutable;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Searches the shapes of one tier: so many boxes side by side, each with ports of every host.</summary>
internal sealed class BoxSearch(SearchContext context)
{
    private const int PairBoxes = 2;

    /// <summary>The best of a shape.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="builds">Boxes to choose from.</param>
    /// <param name="boxes">How many stand side by side.</param>
    /// <param name="peerLinks">Links between the two of a pair; 0 for none.</param>
    /// <param name="incumbent">What the shape has come to so far.</param>
    public ShapeResult Run(FabricShape shape, IEnumerable<SwitchBuild> builds, int boxes, int peerLinks, Incumbent incumbent)
    {
        if (context.Demand.Hosts.FirstOrDefault(h => h.Demand.Ports % boxes != 0) is { } odd)
            return ShapeResult.None(odd.Demand.NotSpread($"{boxes}"));
        if (context.Wanted.Survive >= boxes)
            return ShapeResult.None(boxes == 1 ? "nothing is left when the one switch is out"
                : $"{context.Wanted.Survive} of {boxes} may be out, and a host needs one");
        var found = builds.SelectMany(b => Designs(shape, b, boxes, peerLinks)).Select(d => (Design: d, Least: Least(d)))
            .Where(d => !double.IsNaN(d.Least))
            .OrderBy(d => d.Least);
        foreach (var (design, least) in found) incumbent.Offer(design, least);
        return incumbent.Result(TooSmall(boxes));
    }

    /// <summary>Every way to open a box's ports for all kinds of host, and for its peer.</summary>
    private IEnumerable<FabricDesign> Designs(FabricShape shape, SwitchBuild build, int boxes, int peerLinks)
    {
        // What a host sends to one of a pair may have to reach the other: peers are no slower than the ports of any host.
        var peers = peerLinks > 0
            ? context.Space.FabricUses(build, context.Wanted).Where(u => u.Mode.Ways == 1 && u.Mode.Rate >= FastestHost)
            : [default];
        foreach (var peer in peers)
        {
            foreach (var uses in Choices(build, 0, []).Where(u => Fits(build, u, boxes, peer, peerLinks)))
            {
                // Above the hosts where there is room; where racks have limits, modules may take it away again.
                bool[] ways = context.Demand.Hall.Limits is null ? [false] : [false, true];
                foreach (var isApart in ways)
                    yield return new FabricDesign
                    {
                        Shape = shape,
                        Planes = boxes,
                        PeerLinks = peerLinks,
                        Leaves =
                        [
                            .. uses.Select((u, kind) =>
                                new LeafChoice(build, u, peer, Math.Max(1, context.Demand.Finals[kind]), 0) { IsApart = isApart }),
                        ],
                    };
            }
        }
    }

    private BitRate FastestHost => context.Demand.Hosts.Max(h => h.Demand.Rate);

    private IEnumerable<ImmutableArray<PortUse>> Choices(SwitchBuild build, int kind, ImmutableArray<PortUse> chosen)
    {
        if (kind == context.Demand.Hosts.Length) return [chosen];
        return context.Space.Uses(build, context.Demand.Hosts[kind].Demand.Rate, context.Wanted)
            .SelectMany(u => Choices(build, kind + 1, chosen.Add(u)));
    }

    private bool Fits(SwitchBuild build, ImmutableArray<PortUse> uses, int boxes, PortUse peer, int peerLinks)
    {
        var taking = new PortTaking(build.Layout);
        for (var kind = 0; kind < uses.Length; kind++)
        {
            for (var port = 0; port < context.Demand.Hosts[kind].Demand.Ports; port += boxes)
            {
                var taken = taking.Take(uses[kind], context.Demand.Finals[kind]);
                if (taken.Length * uses[kind].Mode.Ways < context.Demand.Finals[kind]) return false;
            }
        }
        return peerLinks == 0 || taking.Take(peer, peerLinks).Length * peer.Mode.Ways >= peerLinks;
    }

    private double Least(FabricDesign design)
    {
        var least = context.Floor.Switches(design.Leaves[0].Build, design.Planes, (long)design.Planes * context.Wanted.Years);
        for (var kind = 0; kind < design.Leaves.Length; kind++)
        {
            var host = context.Demand.Hosts[kind];
            var links = (long)context.Demand.Finals[kind] * host.Demand.Ports;
            least += context.Floor.Edge(
                new LinkEnds(host.Port, design.Leaves[kind].HostPorts), links, context.HostYears(kind) * host.Demand.Ports);
        }
        return least;
    }

    private string TooSmall(int boxes)
    {
        var ports = Enumerable.Range(0, context.Demand.Hosts.Length)
            .Sum(k => (long)context.Demand.Finals[k] * context.Demand.Hosts[k].Demand.Ports / boxes);
        var rates = string.Join(" and ", context.Demand.Hosts.Select(h => h.Demand.Rate.ToString()).Distinct());
        return $"no switch that is allowed has {Numerals.Whole(ports)} ports of {rates} for the hosts"
            + (boxes == PairBoxes ? " and some as fast for its peer" : "");
    }
}
