using Lanewright.Engineering.Load.Symmetry;

namespace Lanewright.Engineering.Load;

/// <summary>Pairs of unit types sorted into classes that symmetry proves alike. Units that fail the same are one type: cables alike
/// between the same two switches, for example.</summary>
internal sealed class PairClasses
{
    /// <summary>Pairs of types, and moves of pairs, beyond which no classes are made.</summary>
    private const long MostPairs = 4_000_000;
    private const long MostMoves = 400_000_000;

    private readonly UnitTypes types;
    private readonly UnionFind pairs;

    private PairClasses(UnitTypes types)
    {
        this.types = types;
        pairs = new UnionFind(types.Count * types.Count);
        for (var one = 0; one < types.Count; one++)
            for (var two = one + 1; two < types.Count; two++) pairs.Join((one * types.Count) + two, (two * types.Count) + one);
        foreach (var move in types.Moves) Join(move);
    }

    /// <summary>Sorts the pairs; null when there are too many to look at each.</summary>
    public static PairClasses? Of(UnitTypes types)
    {
        var count = (long)types.Count * types.Count;
        var moves = types.Moves.Sum(move => (long)move.Count * types.Count);
        return count > MostPairs || moves > MostMoves ? null : new PairClasses(types);
    }

    /// <summary>Each class by two units that stand for it, and how many pairs of units it holds; in the order of the units.</summary>
    public List<(int One, int Two, long Pairs)> List()
    {
        var sizes = new SortedDictionary<int, long>();
        for (var one = 0; one < types.Count; one++)
        {
            for (var two = one; two < types.Count; two++)
            {
                long members = types.UnitsOf(one).Count;
                var size = one == two ? members * (members - 1) / 2 : members * types.UnitsOf(two).Count;
                var key = pairs.Find((one * types.Count) + two);
                if (size > 0) sizes[key] = sizes.GetValueOrDefault(key) + size;
            }
        }
        return [.. sizes.Select(s => Stand(s.Key / types.Count, s.Key % types.Count, s.Value))];
    }

    private (int, int, long) Stand(int one, int two, long size) => one == two
        ? (types.UnitsOf(one)[0], types.UnitsOf(one)[1], size)
        : (types.UnitsOf(one)[0], types.UnitsOf(two)[0], size);

    private void Join(IReadOnlyDictionary<int, int> move)
    {
        foreach (var (from, to) in move)
            for (var other = 0; other < types.Count; other++)
                pairs.Join((from * types.Count) + other, (to * types.Count) + move.GetValueOrDefault(other, other));
    }
}
