using System.Collections.Immutable;
using Lanewright.Engineering.Cabling;
using Lanewright.Model;
using Lanewright.Model.Links;
using Lanewright.Model.Plant;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>Lengths of the trunks of a plan, and which way round sets of links go through them.</summary>
public sealed class TrunkWays
{
    private readonly RouteLength route;
    private readonly Length?[] lengths;

    /// <summary>Measures in a plan.</summary>
    public TrunkWays(Plan plan, RouteLength route)
    {
        this.route = route;
        lengths = [.. plan.Trunks.Select(LengthOf)];
    }

    /// <summary>How links of a set go; null for a set without trunks. Each group is entered at the end that makes the cords together
    /// shortest; the first link of the set stands for all.</summary>
    public TrunkWay? Of(LinkStatement statement)
    {
        if (statement.Through.IsEmpty) return null;
        var turns = Turns(statement);
        ImmutableArray<TrunkLeg> legs = [.. statement.Through.Select((t, i) => new TrunkLeg(t, turns[i], lengths[t.Index]))];
        return new TrunkWay(legs, [.. legs.Skip(1).Select((next, i) => route.Between(legs[i].FarPanel, next.NearPanel))]);
    }

    /// <summary>Length of each of the trunks; null when it cannot be told.</summary>
    public Length? Of(TrunkGroup trunk) => lengths[trunk.Index];

    /// <summary>Which of the groups are entered at their far panel. Every choice is tried: a way has a few trunks.</summary>
    private ImmutableArray<bool> Turns(LinkStatement statement)
    {
        var trunks = statement.Through;
        var (from, to) = (statement.From.Devices[0], statement.To.Devices[0]);
        var (best, least) = (0, double.MaxValue);
        for (var choice = 0; choice < 1 << trunks.Length; choice++)
        {
            var (metres, here) = (0.0, from);
            for (var i = 0; i < trunks.Length; i++)
            {
                var isTurned = IsTurned(choice, i);
                metres += Metres(here, isTurned ? trunks[i].To : trunks[i].From);
                here = isTurned ? trunks[i].From : trunks[i].To;
            }
            metres += Metres(here, to);
            if (metres < least) (best, least) = (choice, metres);
        }
        return [.. Enumerable.Range(0, trunks.Length).Select(i => IsTurned(best, i))];
    }

    private static bool IsTurned(int choice, int trunk) => (choice & (1 << trunk)) != 0;

    private Length? LengthOf(TrunkGroup trunk) =>
        trunk.Length ?? (route.Between(trunk.From, trunk.To) is { } way ? trunk.Cable.OrderedFor(way) ?? way : null);

    /// <summary>Cords reach panels of their own hall; a panel that has no way to a device is far from it.</summary>
    private double Metres(int device, int panel) => route.Between(device, panel)?.Metres ?? Far;

    private const double Far = 1e9;
}
