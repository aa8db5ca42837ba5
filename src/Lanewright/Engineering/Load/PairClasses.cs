using System.Collections.Immutable;
using Lanewright.Engineering.Load.Symmetry;

namespace Lanewright.Engineering.Load;

/// <summary>Pairs of things that may fail, sorted into classes that symmetry proves alike.</summary>
internal sealed class PairClasses
{
    /// <summary>Ordered pairs, and moves of pairs, beyond which no classes are made.</summary>
    private const long MostPairs = 16_000_000;
    private const long MostMoves = 1_000_000_000;

    private readonly int count;
    private readonly UnionFind pairs;

    private PairClasses(int count, ImmutableArray<IReadOnlyDictionary<int, int>> moves)
    {
        this.count = count;
        pairs = new UnionFind(count * count);
        for (var one = 0; one < count; one++)
            for (var two = one + 1; two < count; two++) pairs.Join((one * count) + two, (two * count) + one);
        foreach (var move in moves) Join(move);
    }

    /// <summary>Each class by two units that stand for it, and how many pairs of units it holds; in the order of the units. Null when there
    /// are too many to look at each.</summary>
    public static List<(int One, int Two, long Pairs)>? Of(FabricGraph graph, TrafficMatrix traffic, ImmutableArray<FailureUnit> units)
    {
        // A link, its modules and a cable with no other link take down the same: one stands for all.
        var alike = Enumerable.Range(0, units.Length).GroupBy(u => units[u].Outage, Outage.Alike).Select(g => g.ToArray()).ToArray();
        if ((long)alike.Length * alike.Length > MostPairs) return null;
        var distinct = alike.Select(g => units[g[0]] with { Kind = default, Name = "" }).ToImmutableArray();
        var moves = UnitMoves.Of(graph, traffic, distinct);
        if (moves.Sum(move => (long)move.Count * distinct.Length) > MostMoves) return null;
        return new PairClasses(distinct.Length, moves).List(alike);
    }

    private List<(int One, int Two, long Pairs)> List(int[][] alike)
    {
        var sizes = new SortedDictionary<int, long>();
        var within = new SortedDictionary<int, (int[] Units, long Pairs)>();
        for (var one = 0; one < count; one++)
        {
            for (var two = one + 1; two < count; two++)
            {
                var key = pairs.Find((one * count) + two);
                sizes[key] = sizes.GetValueOrDefault(key) + ((long)alike[one].Length * alike[two].Length);
            }
            if (alike[one].Length < 2) continue;
            // Two that take down the same do together what each does.
            var own = pairs.Find((one * count) + one);
            var before = within.TryGetValue(own, out var known) ? known : (alike[one], 0);
            within[own] = (before.Item1, before.Item2 + ((long)alike[one].Length * (alike[one].Length - 1) / 2));
        }
        return
        [
            .. sizes.Select(s => (One: alike[s.Key / count][0], Two: alike[s.Key % count][0], s.Value))
                .Concat(within.Values.Select(w => (One: w.Units[0], Two: w.Units[1], w.Pairs)))
                .Select(p => (Math.Min(p.One, p.Two), Math.Max(p.One, p.Two), p.Item3)),
        ];
    }

    private void Join(IReadOnlyDictionary<int, int> move)
    {
        foreach (var (from, to) in move)
            for (var other = 0; other < count; other++)
                pairs.Join((from * count) + other, (to * count) + move.GetValueOrDefault(other, other));
    }
}
