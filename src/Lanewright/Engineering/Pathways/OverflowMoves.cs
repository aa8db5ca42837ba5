using System.Collections.Immutable;
using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Pathways;

/// <summary>Leads cables out of pathways that hold or bear too much: one after another the cable whose next way with room is the least
/// longer for the room it makes. Of cables alike the last of the plan goes first. With one overfull stretch and cables alike no other
/// choice is shorter in all; beyond that it is a good choice and no proof.</summary>
internal sealed class OverflowMoves
{
    private readonly WayNet net;
    private readonly StretchRoom room;
    private readonly ImmutableArray<CablePiece> pieces;
    private readonly CableWay?[] ways;
    private readonly Func<int, CableWay?> partnerWay;
    private readonly WaySearch search;
    private readonly Occupancy[] own;
    private readonly List<(int Piece, CableMove Move)> moves = [];

    /// <summary>Takes what is laid.</summary>
    /// <param name="net">The graph.</param>
    /// <param name="room">What lies in it.</param>
    /// <param name="pieces">The cables.</param>
    /// <param name="ways">Their ways, which change.</param>
    /// <param name="partnerWay">The way of the other of a pair, by the number of a piece; null where a cable is of no pair.</param>
    public OverflowMoves(
        WayNet net, StretchRoom room, ImmutableArray<CablePiece> pieces, CableWay?[] ways, Func<int, CableWay?> partnerWay)
    {
        (this.net, this.room, this.pieces, this.ways, this.partnerWay) = (net, room, pieces, ways, partnerWay);
        search = new WaySearch(net);
        own = new Occupancy[net.Closable];
    }

    /// <summary>Moves what can be moved; gives the moves by the number of their piece.</summary>
    public IReadOnlyList<(int Piece, CableMove Move)> Run()
    {
        var over = room.Over().ToHashSet();
        if (over.Count == 0) return moves;
        var queue = new PriorityQueue<int, (double Cost, int Group)>();
        var groups = Groups(over);
        var next = new CableWay?[groups.Count];
        for (var g = 0; g < groups.Count; g++) Offer(g);
        while (over.Count > 0 && queue.TryDequeue(out var group, out _))
        {
            var piece = groups[group].Peek();
            if (ways[piece] is not { } old || !old.Stretches.Any(over.Contains)) continue;
            if (next[group] is not { } way || !HasRoom(way, old, pieces[piece]))
            {
                Offer(group);
                continue;
            }
            groups[group].Pop();
            Move(piece, old, way, old.Stretches.First(over.Contains));
            over.RemoveWhere(s => !room.IsOver(s));
            if (groups[group].Count > 0 && over.Overlaps(old.Stretches)) Enqueue(group, piece, old, way);
        }
        return moves;

        void Offer(int group)
        {
            var piece = groups[group].Peek();
            if (ways[piece] is not { } old) return;
            next[group] = NextWay(piece, old);
            if (next[group] is { } way) Enqueue(group, piece, old, way);
        }

        void Enqueue(int group, int piece, CableWay old, CableWay way)
        {
            var gain = room.GainOf(old.Stretches.First(over.Contains), pieces[piece]);
            if (gain > 0) queue.Enqueue(group, (More(piece, old, way) / gain, group));
        }
    }

    private double More(int piece, CableWay old, CableWay way) =>
        net.MetresOf(way, pieces[piece].Question) - net.MetresOf(old, pieces[piece].Question);

    /// <summary>Cables alike that lie in overfull stretches, the last of the plan on top.</summary>
    private List<Stack<int>> Groups(HashSet<int> over)
    {
        var groups = new List<Stack<int>>();
        var known = new Dictionary<(WayQuestion, CableItem, CableWay, CableWay?), Stack<int>>();
        for (var i = 0; i < pieces.Length; i++)
        {
            if (pieces[i].IsFixed || ways[i] is not { } way || !way.Stretches.Any(over.Contains)) continue;
            var key = (pieces[i].Question, pieces[i].Item, way, partnerWay(i));
            if (!known.TryGetValue(key, out var group)) groups.Add(known[key] = group = new Stack<int>());
            group.Push(i);
        }
        return groups;
    }

    private bool HasRoom(CableWay way, CableWay old, CablePiece piece) =>
        way.Stretches.All(s => (old.Stretches.Contains(s) && !room.IsOver(s)) || room.HasRoom(s, piece));

    /// <summary>The shortest way through stretches with room, which keeps away from the way of the other of a pair.</summary>
    private CableWay? NextWay(int piece, CableWay old)
    {
        var (cable, partner) = (pieces[piece], partnerWay(piece));
        foreach (var stretch in old.Stretches) own[stretch] = Occupancy.Itself;
        foreach (var taken in partner?.Closing(net) ?? []) own[taken] = Occupancy.Partner;
        var way = search.Past(pieces[piece].Question, IsClosed);
        foreach (var stretch in old.Stretches) own[stretch] = Occupancy.Others;
        foreach (var taken in partner?.Closing(net) ?? []) own[taken] = Occupancy.Others;
        return way;

        // What it lies in now and is not overfull has its own room.
        bool IsClosed(int what) => own[what] switch
        {
            Occupancy.Partner => true,
            Occupancy.Itself => room.IsOver(what),
            _ => what < net.Stretches.Length && !room.HasRoom(what, cable),
        };
    }

    private enum Occupancy : byte
    {
        Others,
        Itself,
        Partner,
    }

    private void Move(int piece, CableWay old, CableWay way, int full)
    {
        var move = new CableMove(pieces[piece].Key, full, More(piece, old, way)) { IsForLoad = !room.IsOverfull(full) };
        room.Lay(old, pieces[piece], -1);
        room.Lay(way, pieces[piece], 1);
        ways[piece] = way;
        moves.Add((piece, move));
    }
}
