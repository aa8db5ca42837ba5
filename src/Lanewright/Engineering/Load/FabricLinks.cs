using System.Collections.Immutable;
using Lanewright.Engineering.Lines;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>Puts the links of a network that run in parallel at one rate together, and channels of a route between sites.</summary>
/// <param name="Links">The links of the fabric, in the order of their first links of the plan.</param>
/// <param name="LinkOf">Fabric link of each link of the plan; -1 outside the network.</param>
/// <param name="FirstPlanLink">First link of the plan in each fabric link; -1 for a route between sites.</param>
/// <param name="Routes">Routes between sites by their fabric links.</param>
internal sealed record FabricLinks(ImmutableArray<FabricLink> Links, int[] LinkOf, int[] FirstPlanLink,
    ImmutableSortedDictionary<int, LineRoute> Routes)
{
    /// <summary>Puts them together.</summary>
    /// <param name="network">The network.</param>
    /// <param name="nodeOf">Node of each device.</param>
    /// <param name="lines">Lines between sites whose channels belong to the network; null for none.</param>
    public static FabricLinks Of(PlanNetwork network, int[] nodeOf, LineBook? lines)
    {
        var plan = network.Plan;
        var linkOf = new int[plan.Links.Count];
        var byEnds = new Dictionary<(int A, int B, BitRate Rate), int>();
        var links = ImmutableArray.CreateBuilder<FabricLink>();
        var firsts = new List<int>();
        for (var link = 0; link < linkOf.Length; link++)
        {
            linkOf[link] = -1;
            if (!network.Contains(link)) continue;
            var (from, to) = (nodeOf[plan.Links.FromDevice(link)], nodeOf[plan.Links.ToDevice(link)]);
            var ends = (Math.Min(from, to), Math.Max(from, to), network.Statement(link).Rate);
            if (!byEnds.TryGetValue(ends, out var index))
            {
                byEnds[ends] = index = links.Count;
                links.Add(new FabricLink(ends.Item1, ends.Item2, ends.Rate, 0));
                firsts.Add(link);
            }
            links[index] = links[index] with { Count = links[index].Count + 1 };
            linkOf[link] = index;
        }
        var routes = ImmutableSortedDictionary.CreateBuilder<int, LineRoute>();
        foreach (var (link, route) in OfLines(network, nodeOf, lines))
        {
            routes[links.Count] = route;
            links.Add(link);
            firsts.Add(-1);
        }
        return new FabricLinks(links.ToImmutable(), linkOf, [.. firsts], routes.ToImmutable());
    }

    /// <summary>Channels of each route between the same two switches; a route that fails carries nothing.</summary>
    private static IEnumerable<(FabricLink Link, LineRoute Route)> OfLines(PlanNetwork network, int[] nodeOf, LineBook? lines)
    {
        if (lines is null) yield break;
        var alike = network.Plan.LinePorts.Where(p => network.IsSwitch(p.FromDevice) && network.IsSwitch(p.ToDevice))
            .GroupBy(p => (p.Line, p.Route, From: nodeOf[p.FromDevice], To: nodeOf[p.ToDevice]));
        foreach (var channels in alike)
        {
            var (line, _, from, to) = channels.Key;
            if (from < 0 || to < 0 || from == to || lines.RouteOf(channels.First()) is not { Carries: true } route) continue;
            yield return (new FabricLink(
                Math.Min(from, to), Math.Max(from, to), network.Plan.Lines[line].Rate, channels.Count()), route);
        }
    }
}
