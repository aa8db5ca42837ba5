using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Lines;
using Lanewright.Model;

namespace Lanewright.Engineering.Pathways;

/// <summary>Where every cable of a design lies: on the shortest way, apart from its pair where the plan wants that, or, where a pathway
/// has no more room, on the next way that has.</summary>
public sealed class CableLaying
{
    private readonly CableWay?[] ways;
    private readonly CablePieces pieces;

    private CableLaying(
        WayNet net, CablePieces pieces, CableWay?[] ways, StretchRoom room, LaidDetours detours)
    {
        Net = net;
        this.pieces = pieces;
        this.ways = ways;
        Detours = detours;
        Fills =
        [
            .. Enumerable.Range(0, net.Stretches.Length)
                .Select(s => new SegmentFill(net, s, room.Cables[s], room.Area[s], room.Unknown[s])
                {
                    KilogramsAMetre = room.Kilograms[s],
                    WeightMark = room.Marks[s],
                    Unweighed = room.Unweighed[s],
                }),
        ];
    }

    /// <summary>The graph of pathways.</summary>
    public WayNet Net { get; }

    /// <summary>All that is laid.</summary>
    public ImmutableArray<CablePiece> Pieces => pieces.All;

    /// <summary>Every stretch of every pathway.</summary>
    public ImmutableArray<SegmentFill> Fills { get; }

    /// <summary>Cables that do not go the shortest way.</summary>
    public LaidDetours Detours { get; }

    /// <summary>Number of the piece a cord, a cable or a trunk is or lies in; -1 where nothing is laid from rack to rack.</summary>
    public int PieceOf(CableKey key) => pieces.Of(key);

    /// <summary>The way of a piece by its number; null where none leads there.</summary>
    public CableWay? WayOf(int piece) => ways[piece];

    /// <summary>Lays a design.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="design">How its links are made.</param>
    /// <param name="cords">Cords of lines, which lie there too.</param>
    /// <param name="shortest">Shortest ways.</param>
    /// <param name="detours">Cables that have been led another way before, and stay there.</param>
    /// <param name="mayMove">Whether more may be led another way.</param>
    internal static CableLaying Of(
        Plan plan, LinkDesign design, ImmutableArray<LineCord> cords, ShortestWays shortest, LaidDetours detours, bool mayMove)
    {
        var net = shortest.Net;
        var laid = CablePieces.Of(plan, design, cords);
        var pieces = laid.All;
        shortest.Expect(pieces.Where(p => !detours.Ways.ContainsKey(p.Key)).Select(p => p.Question).Distinct());
        var ways = new CableWay?[pieces.Length];
        var room = new StretchRoom(net, plan.Standards);
        for (var i = 0; i < pieces.Length; i++)
        {
            ways[i] = detours.Ways.GetValueOrDefault(pieces[i].Key) ?? shortest.Between(pieces[i].Question);
            if (ways[i] is { } way) room.Lay(way, pieces[i], 1);
        }
        if (!mayMove) return new CableLaying(net, laid, ways, room, detours);
        var partners = detours.Partners;
        var moves = new OverflowMoves(net, room, pieces, ways, Partner).Run();
        var moved = detours.With(moves.Select(m => (m.Move, ways[m.Piece])), laid.KeysOf(moves.Select(m => m.Piece)), net);
        return new CableLaying(net, laid, ways, room, moved);

        CableWay? Partner(int piece) =>
            partners.TryGetValue(pieces[piece].Key, out var other) ? detours.Ways.GetValueOrDefault(other) : null;
    }
}
