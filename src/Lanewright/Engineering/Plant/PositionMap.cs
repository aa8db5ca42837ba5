using System.Collections.Immutable;
using Lanewright.Standards;

namespace Lanewright.Engineering.Plant;

/// <summary>Where each position of one side arrives on the other. Positions count from 1; every one arrives at exactly one.</summary>
public sealed class PositionMap
{
    private readonly ImmutableArray<int> to;

    private PositionMap(ImmutableArray<int> to) => this.to = to;

    /// <summary>How many positions there are.</summary>
    public int Count => to.Length;

    /// <summary>Where each position arrives, from the first.</summary>
    public ImmutableArray<int> Arrivals => to;

    /// <summary>Where a position arrives.</summary>
    public int this[int position] => to[position - 1];

    /// <summary>The map of a type of part for an even number of positions.</summary>
    public static PositionMap Of(ArrayMap map, int positions) =>
        new([.. Enumerable.Range(1, positions).Select(p => Arrival(map, p, positions))]);

    /// <summary>This way, then another.</summary>
    public PositionMap Then(PositionMap next) => new([.. to.Select(p => next[p])]);

    /// <summary>The same way walked from the other side.</summary>
    public PositionMap Backward()
    {
        var from = new int[Count];
        for (var p = 1; p <= Count; p++) from[this[p] - 1] = p;
        return new PositionMap([.. from]);
    }

    private static int Arrival(ArrayMap map, int p, int positions)
    {
        var pair = (p + 1) / 2;
        return map switch
        {
            ArrayMap.Reversed => positions + 1 - p,
            ArrayMap.PairFlipped => p % 2 == 1 ? p + 1 : p - 1,
            ArrayMap.PairsReversed => (2 * ((positions / 2) + 1 - pair)) - (p % 2),
            ArrayMap.EndToEnd => p % 2 == 1 ? pair : positions + 1 - pair,
            _ => p,
        };
    }
}
