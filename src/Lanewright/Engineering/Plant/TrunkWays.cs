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
    private readonly RouteLength route;
    private readonly LaidDetours detours;
    private readonly Length?[] lengths;

    /// <summary>Measures in a plan.</summary>
    public TrunkWays(Plan plan, RouteLength route, LaidDetours detours)
    {
        this.route = route;
        this.detours = detours;
        lengths = [.. plan.Trunks.Select(LengthOf)];
    }

    /// <summary>How links of a set go; null for a set without trunks.</summary>
    public TrunkWay? Of(LinkStatement statement)
    {
        if (statement.Through is not { } trunk) return null;
        // The end that has the shorter cords decides: the first link of the set stands for all.
        var (from, to) = (statement.From.Devices[0], statement.To.Devices[0]);
        var straight = Metres(from, trunk.From) + Metres(to, trunk.To);
        var turned = Metres(from, trunk.To) + Metres(to, trunk.From);
        return new TrunkWay(trunk, turned < straight, lengths[trunk.Index]);
    }

    /// <summary>Length of each of the trunks; null when it cannot be told.</summary>
    public Length? Of(TrunkGroup trunk) => lengths[trunk.Index];

    private Length? LengthOf(TrunkGroup trunk) =>
        trunk.Length ?? (Longest(trunk) is { } way ? trunk.Cable.OrderedFor(way) ?? way : null);

    /// <summary>Trunks alike are equally long: as the one that goes the longest way.</summary>
    private Length? Longest(TrunkGroup trunk)
    {
        var longest = route.Between(trunk.From, trunk.To);
        for (var number = 0; number < trunk.Count && !detours.Moves.IsEmpty; number++)
        {
            if (!detours.Ways.TryGetValue(new CableKey(CableKind.Trunk, trunk.Index, number), out var way)) continue;
            var own = route.Along(way, trunk.From, trunk.To).Total;
            longest = longest is { } before ? Length.Max(before, own) : own;
        }
        return longest;
    }

    /// <summary>Cords reach panels of their own hall; a panel that has no way to a device is far from it.</summary>
    private double Metres(int device, int panel) => route.Between(device, panel)?.Metres ?? double.MaxValue / 4;
}
