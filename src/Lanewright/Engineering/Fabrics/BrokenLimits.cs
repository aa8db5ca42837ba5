using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Holds a priced design against the limits that can be told only once it is priced.</summary>
internal static class BrokenLimits
{
    /// <summary>The first limit it breaks, in a few words; empty when it keeps them all.</summary>
    public static string Of(PricedDesign design, WantedFabric wanted)
    {
        if (wanted.RackUnits is { } units && design.End.RackUnits > units)
            return $"its switches take {Numerals.Whole(design.End.RackUnits)} rack units and {Numerals.Whole(units)} are allowed";
        if (Draw(design, wanted) is { Length: > 0 } draw) return draw;
        if (wanted.RackWeight is { } mass && design.End.RackKilograms > mass.Kilograms)
            return $"its switches weigh {Shown(design.End.RackKilograms, "kg")} in one rack and {mass} are allowed";
        if (wanted.Budget is { } budget && design.Total > budget)
            return $"it costs {design.Total} over the years and the budget is {budget}";
        return "";
    }

    /// <summary>That its switches in one rack draw too much; empty where they do not.</summary>
    public static string Draw(PricedDesign design, WantedFabric wanted) =>
        wanted.RackPower is { } power && design.End.RackWatts > power.Value
            ? $"its switches draw {Shown(design.End.RackWatts, "W")} in one rack and {power} are allowed"
            : "";

    /// <summary>The same as far as it can be told from the counts alone, before a design is placed.</summary>
    public static string BeforePricing(FabricDesign design, FabricDemand demand)
    {
        var wanted = demand.Wanted;
        var room = default(SharedRoom);
        for (var kind = 0; kind < design.Leaves.Length; kind++)
        {
            var leaf = design.Leaves[kind];
            var ports = demand.Hosts[kind].Demand.Ports;
            if (design.IsBox && kind > 0) break;
            var final = design.IsBox ? design.Planes : leaf.BlocksFor(demand.Finals[kind]) * ports;
            room += SharedRoom.Of(leaf.Build, final);
            if (OfOne(leaf.Build, wanted) is { Length: > 0 } broken) return broken;
        }
        if (design.Upper is { } upper)
        {
            if (OfOne(upper.Build, wanted) is { Length: > 0 } above) return above;
            if (design.Core is { } top && OfOne(top.Build, wanted) is { Length: > 0 } highest) return highest;
            var pods = design.Core is null ? 1 : new PodPlan(demand, design).Count;
            room += SharedRoom.Of(upper.Build, (long)design.Planes * pods * upper.Count);
            if (design.Core is { } core) room += SharedRoom.Of(core.Build, (long)design.Planes * upper.Count * core.Count);
        }
        return demand.RoomFault(room);
    }

    /// <summary>What one switch by itself breaks.</summary>
    public static string OfOne(SwitchBuild build, WantedFabric wanted)
    {
        if (wanted.RackPower is { } power && build.Maximum > power.Value)
            return $"one {build.Name} draws {Shown(build.Maximum, "W")} and {power} are allowed in a rack";
        if (wanted.RackWeight is { } mass && build.Weight > mass.Kilograms)
            return $"one {build.Name} weighs {Shown(build.Weight, "kg")} and {mass} are allowed in a rack";
        return "";
    }

    /// <summary>That one switch with what sits in its cages is too much for a rack.</summary>
    public static string WithModules(SwitchBuild build, double watts, Watts limit) =>
        $"one {build.Name} with its modules draws {Shown(watts, "W")} or more and {limit} are allowed in a rack";

    /// <summary>That the leaves of one rack are too much for it.</summary>
    public static string LeavesInRack(SwitchBuild build, int leaves, double watts, Watts limit) => leaves == 1
        ? WithModules(build, watts, limit)
        : $"{Numerals.Whole(leaves)} x {build.Name} in one rack draw {Shown(watts, "W")} or more with their modules and {limit} are "
            + "allowed";

    private static string Shown(double value, string unit) => Numerals.Shown(value, unit);
}
