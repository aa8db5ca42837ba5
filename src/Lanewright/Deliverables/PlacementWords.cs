using System.Collections.Immutable;
using Lanewright.Engineering.Placement;
using Lanewright.Quantities;

namespace Lanewright.Deliverables;

/// <summary>Placements in words.</summary>
public static class PlacementWords
{
    /// <summary>What a reader has to know before anything is moved.</summary>
    public const string Caution = "Prices are those of the catalogue, each link by itself and bought new; links "
        + "through panels, of stated length or that lie there already are not counted. Fill of trays and "
        + "heat in the new places are judged when the plan says so. Racks that do not bear a device more, by their weight or power, their "
        + "floor or their feeds, are not offered. Racks are moved empty, and heavy devices by two persons or with "
        + "a lift.";

    /// <summary>What is said where no group was named and none is the highest.</summary>
    public const string NoHighest = "no network has switches above those that hosts are linked to, so that no group is the highest; name "
        + "the groups to find places for with --group";

    /// <summary>A group in one line.</summary>
    public static string Of(GroupPlacement placement, string unit) => placement.Best < placement.Now
        ? $"cables cost {Amount(placement.Now)} {unit}, and {Amount(placement.Best)} {unit} in the places below; "
            + Proof(placement.IsExact, placement.NoLessThan, unit) + Longer(placement.Detours, unit)
        : $"cables cost {Amount(placement.Now)} {unit}; {Proof(placement.IsExact, placement.NoLessThan, unit)}"
            + Longer(placement.Detours, unit);

    /// <summary>An order of rows in one line.</summary>
    public static string Of(RowOrder order, string unit) => !order.IsLookedAt
        ? $"{Numerals.Grouped(order.Rows.Length)} rows alike have too many orders to be looked at, and are left as they stand"
        : order.Best < order.Now
        ? $"cables cost {Amount(order.Now)} {unit} in the order {string.Join(" ", order.Rows)}, "
            + $"and {Amount(order.Best)} {unit} in the order "
            + $"{string.Join(" ", order.Order)}; {Proof(order.IsExact, order.NoLessThan, unit)}{Longer(order.Detours, unit)}"
        : $"cables cost {Amount(order.Now)} {unit} in the order {string.Join(" ", order.Rows)}; "
            + Proof(order.IsExact, order.NoLessThan, unit) + Longer(order.Detours, unit);

    /// <summary>What is said of a group that no place was found for.</summary>
    public static string Of(PlacelessGroup group) => group.Places < 0
        ? "its devices have no places in the plan, so that none is better"
        : $"{Numerals.Grouped(group.Devices)} devices, and {Numerals.Grouped(group.Places)} free "
            + (group.Places == 1 ? "place" : "places") + " that bear one in the racks of its kind that were named; name more rows, "
            + "or make room";

    /// <summary>A place.</summary>
    public static string Place(PlacedAt place) => $"{place.Rack.Name} unit {Numerals.Whole(place.Unit)}";

    /// <summary>What stays open of whether racks bear what they are offered for; empty where nothing does.</summary>
    public static string Of(BearingGaps gaps) => string.Join(", ", Open(gaps));

    /// <summary>The same, one by one.</summary>
    public static IEnumerable<string> Open(BearingGaps gaps) => Gaps.Where(g => gaps.HasFlag(g.Gap)).Select(g => g.Words);

    private static readonly ImmutableArray<(BearingGaps Gap, string Words)> Gaps =
    [
        (BearingGaps.DeviceWeight, "weight of devices"),
        (BearingGaps.RackWeight, "weight of the empty rack"),
        (BearingGaps.Power, "power of devices"),
    ];

    /// <summary>An amount of money.</summary>
    public static string Amount(double units) => double.IsInfinity(units) ? "not possible" : Numerals.Grouped((decimal)units, 2);

    private static string Longer(double detours, string unit) => detours <= 0 ? ""
        : $"; {Amount(detours)} {unit} of it are for cables that are kept apart or found no room on the shortest way, and are taken to "
            + "stay";

    private static string Proof(bool isExact, double bound, string unit) =>
        isExact ? "none is cheaper" : $"no placement costs less than {Amount(bound)} {unit}";
}
