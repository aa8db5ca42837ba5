using Lanewright.Engineering.Choice;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Engineering.Load;

/// <summary>Delay of the quickest and of the slowest of all shortest ways between hosts.</summary>
/// <param name="Shortest">The quickest.</param>
/// <param name="ShortestFrom">The bundle it begins at.</param>
/// <param name="ShortestTo">The bundle it ends at.</param>
/// <param name="Longest">The slowest.</param>
/// <param name="LongestFrom">The bundle it begins at.</param>
/// <param name="LongestTo">The bundle it ends at.</param>
/// <param name="Mark">The weakest mark of the values used.</param>
public sealed record PathLatency(
    Delay Shortest, int ShortestFrom, int ShortestTo, Delay Longest, int LongestFrom, int LongestTo, Mark Mark)
{
    /// <summary>Links visited from all bundles together, beyond which nothing is reckoned.</summary>
    public const long MostWork = 1L << 30;

    /// <summary>The latency of a network; null when no two hosts are joined, the delay of a link on the way is not known, or the network
    /// is larger than <see cref="MostWork"/> allows.</summary>
    public static PathLatency? Of(FabricMap map, LinkDesign design)
    {
        var graph = map.Graph;
        var bundles = Enumerable.Range(0, graph.Nodes.Length).Where(n => graph.Nodes[n].IsTerminal).ToList();
        if (bundles.Count * (long)graph.Links.Length * 2 > MostWork) return null;
        var delays = LinkDelays.Of(map, design);
        if (delays.Least.Any(d => d is null)) return null;
        var perSwitch = map.Plan.Standards.Practice("switch", "delay");
        var passing = new Delay(0, 1, Duration.FromNanoseconds(perSwitch.Value), default, default);
        var search = new DelaySearch(graph, delays, passing);
        PathLatency? found = null;
        foreach (var from in bundles)
        {
            var (shortest, nearest, longest, farthest) = search.From(from);
            if (nearest < 0) continue;
            found ??= new PathLatency(shortest, from, nearest, longest, from, farthest, Marks.Weaker(delays.Mark, perSwitch.Source.Mark));
            if (shortest.Total < found.Shortest.Total)
                found = found with { Shortest = shortest, ShortestFrom = from, ShortestTo = nearest };
            if (longest.Total > found.Longest.Total)
                found = found with { Longest = longest, LongestFrom = from, LongestTo = farthest };
        }
        return found;
    }
}
