using System.Collections.Immutable;
using Lanewright.Model.Plant;
using Lanewright.Standards;

namespace Lanewright.Engineering.Plant;

/// <summary>How a trunk with what is at its ends leads fibres from the front of one panel to that of the other.</summary>
public sealed class TrunkInside
{
    private readonly TrunkGroup trunk;
    private readonly PositionMap? map;
    private readonly PositionMap? toCable;
    private readonly ImmutableArray<int> nearPairs;
    private readonly ImmutableArray<int> farPairs;

    private TrunkInside(TrunkGroup trunk, PositionMap? map, PositionMap? toCable)
    {
        this.trunk = trunk;
        this.map = map;
        this.toCable = toCable;
        nearPairs = Pairs(trunk.Parts[0]);
        farPairs = Pairs(trunk.Parts[^1]);
    }

    /// <summary>Whether the way of every fibre is known: how two rows of positions are reversed is not.</summary>
    public bool IsKnown => map is not null;

    /// <summary>Where each position of the near front arrives at the far one, duplex ports counted as pairs of positions; null where it
    /// is not known.</summary>
    public PositionMap? Map => map;

    /// <summary>The inside of trunks.</summary>
    /// <param name="trunk">The trunks.</param>
    /// <param name="table">What is known of positions.</param>
    public static TrunkInside Of(TrunkGroup trunk, PolarityTable table)
    {
        var isReversed = trunk.Parts.Any(p => p.Map == ArrayMap.Reversed && p.Kind != ArrayPartKind.Transition);
        if (isReversed && !table.IsReversalKnown(trunk.Positions)) return new TrunkInside(trunk, null, null);
        var map = PositionMap.Of(ArrayMap.Straight, trunk.Positions);
        var toCable = map;
        var isBehindCable = false;
        foreach (var part in trunk.Parts)
        {
            var isCable = part.Kind == ArrayPartKind.Cable;
            if (isCable) toCable = map;
            var own = PositionMap.Of(part.Map, trunk.Positions);
            // A transition behind the cable is met from its array side.
            map = map.Then(isBehindCable && part.Kind == ArrayPartKind.Transition ? own.Backward() : own);
            isBehindCable |= isCable;
        }
        return new TrunkInside(trunk, map, toCable);
    }

    /// <summary>Where a fibre comes out at the other front.</summary>
    /// <param name="at">Where it goes in.</param>
    /// <param name="isTurned">Whether it goes in at the far end.</param>
    public FibreSpot Through(FibreSpot at, bool isTurned)
    {
        if (map is null) return default;
        var (here, there) = isTurned ? (farPairs, nearPairs) : (nearPairs, farPairs);
        if (at.Port > here.Length || (at.IsDuplex && here.IsEmpty)) return default;
        var position = at.IsDuplex ? (2 * here[at.Port - 1]) - 2 + at.Side : at.Position;
        var arrival = isTurned ? map.Backward()[position] : map[position];
        if (there.IsEmpty) return FibreSpot.Of(arrival);
        return FibreSpot.Of(there.IndexOf((arrival + 1) / 2) + 1, arrival % 2 == 1 ? 1 : 2);
    }

    /// <summary>The number of a fibre in the cable, counted from the positions of its near end that have one; 0 where it is not
    /// known.</summary>
    /// <param name="at">Where it goes in.</param>
    /// <param name="isTurned">Whether it goes in at the far end.</param>
    public int FibreOf(FibreSpot at, bool isTurned)
    {
        if (toCable is null || !trunk.IsOrderKnown) return 0;
        var near = isTurned ? Through(at, isTurned) : at;
        if (near == default || near.Port > nearPairs.Length) return 0;
        var position = toCable[near.IsDuplex ? (2 * nearPairs[near.Port - 1]) - 2 + near.Side : near.Position];
        var dark = trunk.Positions - trunk.Fibres;
        return position <= trunk.Fibres / 2 ? position : position > (trunk.Fibres / 2) + dark ? position - dark : 0;
    }

    /// <summary>The port at which a duplex port of the near end arrives; 0 where its fibres part, or it is not known. Cassettes alike
    /// whose order nobody read still lead each port to its own number, where they do so in one order: then they do in every
    /// order.</summary>
    public int FarPortOf(int port) => Arrival(port);

    private int Arrival(int port)
    {
        var (first, second) = (Through(FibreSpot.Of(port, 1), isTurned: false), Through(FibreSpot.Of(port, 2), isTurned: false));
        if (first.Port == 0 || first.Port != second.Port) return 0;
        return trunk.IsOrderKnown || LeadsEachToItself() ? first.Port : 0;
    }

    private bool LeadsEachToItself() =>
        trunk.Parts[0].Name == trunk.Parts[^1].Name
        && Enumerable.Range(1, nearPairs.Length).All(p => Through(FibreSpot.Of(p, 1), false).Port == p);

    /// <summary>The pairs of a cassette that have fibres behind them, in the order of its ports; empty for an open array.</summary>
    private ImmutableArray<int> Pairs(ArrayPart end)
    {
        if (end.Kind != ArrayPartKind.Transition) return [];
        var own = PositionMap.Of(end.Map, trunk.Positions);
        return [.. Enumerable.Range(1, trunk.Positions / 2).Where(pair => IsFilled(own[(2 * pair) - 1]) && IsFilled(own[2 * pair]))];
    }

    private bool IsFilled(int position) => position <= trunk.Fibres / 2 || position > trunk.Positions - (trunk.Fibres / 2);
}
