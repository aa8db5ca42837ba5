using System.Collections.Immutable;

namespace Lanewright.Engineering.Pathways;

/// <summary>Cables that do not go the shortest way, and why.</summary>
public sealed class LaidDetours
{
    private LaidDetours(
        ImmutableDictionary<CableKey, CableWay> ways, ImmutableDictionary<CableKey, CableKey> partners, ImmutableArray<ApartPair> pairs,
        ImmutableArray<CableMove> moves)
    {
        (Ways, Partners, Pairs, Moves) = (ways, partners, pairs, moves);
    }

    /// <summary>Nothing but shortest ways.</summary>
    public static LaidDetours None { get; } =
        new(ImmutableDictionary<CableKey, CableWay>.Empty, ImmutableDictionary<CableKey, CableKey>.Empty, [], []);

    /// <summary>Their ways.</summary>
    public ImmutableDictionary<CableKey, CableWay> Ways { get; }

    /// <summary>The other cable of a pair that is kept apart.</summary>
    public ImmutableDictionary<CableKey, CableKey> Partners { get; }

    /// <summary>Pairs that are kept apart, or were to be.</summary>
    public ImmutableArray<ApartPair> Pairs { get; }

    /// <summary>Cables that found no room on a shorter way, in the order they were moved.</summary>
    public ImmutableArray<CableMove> Moves { get; }

    /// <summary>The ways of pairs.</summary>
    public static LaidDetours Of(ApartWays apart) => new(
        apart.Ways.ToImmutableDictionary(),
        apart.Pairs.SelectMany(p => new[] { (p.One, p.Other), (p.Other, p.One) })
            .GroupBy(p => Cable(p.Item1)).ToImmutableDictionary(g => g.Key, g => Cable(g.First().Item2)),
        [.. apart.Pairs],
        []);

    /// <summary>These and more cables that were moved.</summary>
    /// <param name="more">The moves with the new ways.</param>
    /// <param name="sharing">All that shares a cable, by its key.</param>
    /// <param name="net">The graph, in which pairs are looked at again.</param>
    public LaidDetours With(IEnumerable<(CableMove Move, CableWay? Way)> more, ILookup<CableKey, CableKey> sharing, WayNet net)
    {
        var (ways, moves) = (Ways.ToBuilder(), Moves.ToBuilder());
        foreach (var (move, way) in more)
        {
            if (way is null) continue;
            foreach (var key in sharing[move.Key]) ways[key] = way;
            moves.Add(move);
        }
        if (moves.Count == Moves.Length) return this;
        var moved = moves.Skip(Moves.Length).SelectMany(m => sharing[m.Key]).ToHashSet();
        return new LaidDetours(ways.ToImmutable(), Partners, [.. Pairs.Select(Again)], moves.ToImmutable());

        ApartPair Again(ApartPair pair) => moved.Contains(Cable(pair.One)) || moved.Contains(Cable(pair.Other))
            ? pair.On(net, ways[Cable(pair.One)], ways[Cable(pair.Other)])
            : pair;
    }

    private static CableKey Cable(int link) => new(CableKind.Cable, link);
}
