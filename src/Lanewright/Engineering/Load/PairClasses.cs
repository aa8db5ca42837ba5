using System.Collections.Immutable;
using Lanewright.Engineering.Load.Symmetry;

namespace Lanewright.Engineering.Load;

/// <summary>Pairs of things that may fail, sorted into classes that symmetry proves alike.</summary>
internal sealed class PairClasses
{
    /// <summary>Ordered pairs, and moves of pairs, beyond which no classes are made.</summary>
    private const long MostPairs = 4_000_000;
    private const long MostMoves = 400_000_000;

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

    /// <summary>Sorts the pairs; null when there are too many to look at each.</summary>
    public static PairClasses? Of(FabricGraph graph, TrafficMatrix traffic, ImmutableArray<FailureUnit> units)
    {
        if ((long)units.Length * units.Length > MostPairs) return null;
        var moves = UnitMoves.Of(graph, traffic, units);
        return moves.Sum(move => (long)move.Count * units.Length) > MostMoves ? null : new PairClasses(units.Length, moves);
    }

    /// <summary>Each class by two units that stand for it, and how many pairs of units it holds; in the order of the units.</summary>
    public List<(int One, int Two, long Pairs)> List()
    {
        var sizes = new SortedDictionary<int, long>();
        for (var one = 0; one < count; one++)
        {
            for (var two = one + 1; two < count; two++)
            {
                var key = pairs.Find((one * count) + two);
                sizes[key] = sizes.GetValueOrDefault(key) + 1;
            }
        }
        return [.. sizes.Select(s => (s.Key / count, s.Key % count, s.Value))];
    }

    private void Join(IReadOnlyDictionary<int, int> move)
    {
        foreach (var (from, to) in move)
            for (var other = 0; other < count; other++)
                pairs.Join((from * count) + other, (to * count) + move.GetValueOrDefault(other, other));
    }
}
