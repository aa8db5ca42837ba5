using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>The worst traffic for one link, given which traffic crosses it.</summary>
internal static class HoseProblem
{
    /// <summary>Rows times rows times columns up to which the problem is solved; beyond, it is bounded.</summary>
    private const double MostWork = 4e9;

    /// <summary>The worst case; null when nothing can cross the link.</summary>
    public static LinkWorstCase? Solve(FabricGraph graph, HoseEnds ends, List<Crossing> crossings, int side, int classSize)
    {
        if (crossings.Count == 0) return null;
        int[] senders = [.. crossings.Select(c => c.From).Distinct().Order()];
        int[] receivers = [.. crossings.Select(c => c.To).Distinct().Order()];
        var (matrix, atMost) = (double)Math.Min(senders.Length, receivers.Length) * senders.Length * receivers.Length <= MostWork
            ? Solved(ends, crossings, senders, receivers)
            : Bounded(ends, crossings);
        var fractions = crossings.ToDictionary(c => (c.From, c.To), c => c.Fraction);
        var load = matrix.Sum(flow => flow.Rate.Gigabits * fractions[(flow.From, flow.To)]);
        return Case(graph, side, classSize, load, Math.Max(load, atMost), matrix);
    }

    /// <summary>The worst case of a cable between two bundles of hosts: all that the one sends and the other takes; null when either has
    /// no part.</summary>
    public static LinkWorstCase? Direct(FabricGraph graph, HoseEnds ends, int link, int end)
    {
        var (from, to) = end == 0 ? (graph.Links[link].A, graph.Links[link].B) : (graph.Links[link].B, graph.Links[link].A);
        if (!ends.Nodes.Contains(from) || !ends.Nodes.Contains(to)) return null;
        var rate = BitRate.FromBitsPerSecond(Math.Min(ends.RateOf(from), ends.RateOf(to)));
        bool JoinsThem(FabricLink l) => (l.A, l.B) == (from, to) || (l.A, l.B) == (to, from);
        var cables = graph.Arcs.DirectLinks.Where(l => JoinsThem(graph.Links[l]));
        var load = rate.Gigabits * graph.Links[link].Count / cables.Sum(l => graph.Links[l].Count);
        return Case(graph, (link * 2) + end, 1, load, load, [new Flow(from, to, rate)]);
    }

    private static LinkWorstCase Case(FabricGraph graph, int side, int classSize, double load, double atMost, ImmutableArray<Flow> matrix)
    {
        var capacity = graph.Links[side / 2].Gigabits;
        return new LinkWorstCase(side / 2, side % 2 == 0, classSize, Share.From(load / capacity), Share.From(atMost / capacity), matrix);
    }

    private static (ImmutableArray<Flow> Matrix, double AtMost) Solved(
        HoseEnds ends, List<Crossing> crossings, int[] senders, int[] receivers)
    {
        // The shorter side goes out along paths, as there is one search a row.
        var isTurned = senders.Length > receivers.Length;
        var (rows, columns) = isTurned ? (receivers, senders) : (senders, receivers);
        var worth = new double[rows.Length, columns.Length];
        foreach (var crossing in crossings)
        {
            var (row, column) = isTurned ? (crossing.To, crossing.From) : (crossing.From, crossing.To);
            worth[Array.BinarySearch(rows, row), Array.BinarySearch(columns, column)] = crossing.Fraction;
        }
        var solved = Transportation.Of([.. rows.Select(ends.RateOf)], [.. columns.Select(ends.RateOf)], worth);
        var matrix = ImmutableArray.CreateBuilder<Flow>();
        for (var row = 0; row < rows.Length; row++)
        {
            for (var column = 0; column < columns.Length; column++)
            {
                if (solved.Sent[row, column] == 0 || worth[row, column] == 0) continue;
                var rate = BitRate.FromBitsPerSecond(solved.Sent[row, column]);
                matrix.Add(isTurned ? new Flow(columns[column], rows[row], rate) : new Flow(rows[row], columns[column], rate));
            }
        }
        return (matrix.ToImmutable(), BitRate.FromBitsPerSecond(1).Gigabits * solved.AtMost);
    }

    /// <summary>The largest crossings first, as long as both ends have room; and what senders alone or receivers alone could make of
    /// it.</summary>
    private static (ImmutableArray<Flow> Matrix, double AtMost) Bounded(HoseEnds ends, List<Crossing> crossings)
    {
        var sending = crossings.Select(c => c.From).Distinct().ToDictionary(n => n, ends.RateOf);
        var taking = crossings.Select(c => c.To).Distinct().ToDictionary(n => n, ends.RateOf);
        var matrix = ImmutableArray.CreateBuilder<Flow>();
        foreach (var crossing in crossings.OrderByDescending(c => c.Fraction).ThenBy(c => c.From).ThenBy(c => c.To))
        {
            var amount = Math.Min(sending[crossing.From], taking[crossing.To]);
            if (amount == 0) continue;
            sending[crossing.From] -= amount;
            taking[crossing.To] -= amount;
            matrix.Add(new Flow(crossing.From, crossing.To, BitRate.FromBitsPerSecond(amount)));
        }
        return (matrix.ToImmutable(), AtMost(ends, crossings));
    }

    /// <summary>What no traffic over a link exceeds, in Gb/s: what its senders alone, or its receivers alone, could make of it.</summary>
    public static double AtMost(HoseEnds ends, List<Crossing> crossings)
    {
        double MostOf(IGrouping<int, Crossing> end) => BitRate.FromBitsPerSecond(ends.RateOf(end.Key)).Gigabits * end.Max(c => c.Fraction);
        return Math.Min(crossings.GroupBy(c => c.From).Sum(MostOf), crossings.GroupBy(c => c.To).Sum(MostOf));
    }
}
