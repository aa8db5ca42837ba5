using System.Collections.Immutable;
using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Pathways;
using Lanewright.Model;
using Lanewright.Model.Links;
using Lanewright.Model.Plant;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>Lengths of the trunks of a plan, and which way round sets of links go through them.</summary>
public sealed class TrunkWays
{
    private readonly Plan plan;
    private readonly RouteLength route;
    private readonly LaidDetours detours;
    private readonly Length?[] lengths;
    private readonly Dictionary<(int Statement, int From, int To), TrunkWay> known = [];

    /// <summary>Measures in a plan.</summary>
    public TrunkWays(Plan plan, RouteLength route, LaidDetours detours)
    {
        this.plan = plan;
        this.route = route;
        this.detours = detours;
        lengths = [.. plan.Trunks.Select(LengthOf)];
    }

    /// <summary>How a link of a set goes; null for a set without trunks. Each group is entered at the end that makes the cords together
    /// shortest; links between the same two racks go alike.</summary>
    /// <param name="statement">The set.</param>
    /// <param name="from">The device of the link's first end.</param>
    /// <param name="to">The device of its second end.</param>
    public TrunkWay? Of(LinkStatement statement, int from, int to)
    {
        if (statement.Through.IsEmpty) return null;
        var key = (statement.Index, RackOf(from), RackOf(to));
        if (!known.TryGetValue(key, out var way)) known[key] = way = Way(statement, from, to);
        return way;
    }

    /// <summary>A device without a place is its own.</summary>
    private int RackOf(int device) => plan.Devices.Rack(device)?.Index ?? -1 - device;

    private TrunkWay Way(LinkStatement statement, int from, int to)
    {
        var turns = Turns(statement, from, to);
        ImmutableArray<TrunkLeg> legs = [.. statement.Through.Select((t, i) => new TrunkLeg(t, turns[i], lengths[t.Index]))];
        return new TrunkWay(legs, [.. legs.Skip(1).Select((next, i) => route.Between(legs[i].FarPanel, next.NearPanel, statement.Side))]);
    }

    /// <summary>Length of the longest of the trunks; null when it cannot be told.</summary>
    public Length? Of(TrunkGroup trunk) => lengths[trunk.Index];

    /// <summary>What the geometry needs from panel to panel; null when it cannot be told.</summary>
    public Length? Needed(TrunkGroup trunk) => route.Between(trunk.From, trunk.To, trunk.Side);

    /// <summary>Which of the groups are entered at their far panel. Every choice is tried: a way has a few trunks.</summary>
    private ImmutableArray<bool> Turns(LinkStatement statement, int from, int to)
    {
        var trunks = statement.Through;
        var (best, least) = (0, double.MaxValue);
        for (var choice = 0; choice < 1 << trunks.Length; choice++)
        {
            var (metres, here) = (0.0, from);
            for (var i = 0; i < trunks.Length; i++)
            {
                var isTurned = IsTurned(choice, i);
                metres += Metres(here, isTurned ? trunks[i].To : trunks[i].From, statement.Side);
                here = isTurned ? trunks[i].From : trunks[i].To;
            }
            metres += Metres(here, to, statement.Side);
            if (metres < least) (best, least) = (choice, metres);
        }
        return [.. Enumerable.Range(0, trunks.Length).Select(i => IsTurned(best, i))];
    }

    private static bool IsTurned(int choice, int trunk) => (choice & (1 << trunk)) != 0;

    /// <summary>Length of one of the trunks: as stated, else what is ordered for its own way; null when it cannot be told.</summary>
    /// <param name="trunk">The trunks.</param>
    /// <param name="number">Which of them, from 0.</param>
    public Length? Of(TrunkGroup trunk, int number) =>
        trunk.Length ?? (detours.Ways.TryGetValue(new CableKey(CableKind.Trunk, trunk.Index, number), out var way)
            ? Ordered(trunk, route.Along(way, trunk.From, trunk.To).Total)
            : Needed(trunk) is { } needed ? Ordered(trunk, needed) : null);

    private static Length Ordered(TrunkGroup trunk, Length way) => trunk.Cable.OrderedFor(way) ?? way;

    /// <summary>Light is reckoned through the longest of trunks alike.</summary>
    private Length? LengthOf(TrunkGroup trunk)
    {
        // Without a trunk that was moved all go the same way.
        var longest = Of(trunk, 0);
        for (var number = 1; number < trunk.Count && !detours.Moves.IsEmpty; number++)
            if (Of(trunk, number) is { } own) longest = longest is { } before ? Length.Max(before, own) : own;
        return longest;
    }

    /// <summary>Cords reach panels of their own hall; a panel that has no way to a device is far from it.</summary>
    private double Metres(int device, int panel, string side) => route.Between(device, panel, side)?.Metres ?? Far;

    private const double Far = 1e9;
}
