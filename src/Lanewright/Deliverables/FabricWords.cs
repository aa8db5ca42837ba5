using System.Collections.Immutable;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Deliverables;

/// <summary>Fabrics in words.</summary>
public static class FabricWords
{
    /// <summary>What a device does, in one word.</summary>
    public static string Role(SwitchRole role) => role switch
    {
        SwitchRole.Host => "host",
        SwitchRole.Box => "box",
        SwitchRole.Leaf => "leaf",
        SwitchRole.Aggregation => "aggregation",
        SwitchRole.Spine => "spine",
        _ => "core",
    };

    /// <summary>So many devices of a role.</summary>
    public static string Counted(SwitchRole role, int count) => Numerals.Grouped(count) + " " + (role, count) switch
    {
        (_, 1) => Role(role),
        (SwitchRole.Box, _) => "boxes",
        (SwitchRole.Leaf, _) => "leaves",
        (SwitchRole.Aggregation, _) => "aggregation switches",
        _ => Role(role) + "s",
    };

    /// <summary>Switches alike: how many, of which model, with which cards, and what they do.</summary>
    public static string Switches(SwitchUse use) =>
        $"{Numerals.Whole(use.Count)} x {use.Model.Name}{Cards(use)} ({Role(use.Role)})";

    /// <summary>How a tier reaches the next.</summary>
    public static string Uplinks(TierUplinks tier) =>
        $"{Numerals.Whole(tier.Uplinks)} x {tier.Rate} each to {Numerals.Whole(tier.Uppers)} above, {Ratio(tier.Achieved)}{Split(tier)}";

    /// <summary>How to get what takes too long to be found for documents; empty where nothing is left out.</summary>
    public static string BreakEvensApart(FabricStudy study) => study.DrawnQuantities.IsEmpty
        ? "what would change the answer takes long to find for a fabric of this size: 'lanewright size' with --break-evens finds and "
            + "draws it"
        : "";

    /// <summary>What serves when lanes become one step faster, and what does not, with the reason; once for all options.</summary>
    public static IEnumerable<string> FasterLanes(ImmutableArray<FabricOption> options) => options
        .SelectMany(o => o.NextLaneRate.Kinds)
        .Select(k => $"faster lanes: {(k.IsFibre ? "fibres of" : "modules")} {k.Name} "
            + $"{(k.Serves ? "still serve" : "do not serve")}: {k.Why}")
        .Distinct();

    /// <summary>Which options may after all cost less than the first; none where the first is proven to be the cheapest.</summary>
    public static IEnumerable<string> NotSettled(ImmutableArray<FabricOption> options)
    {
        foreach (var option in options.Where(o => o != options[0] && o.LowerBound < options[0].PriceOverYears))
            yield return $"{FabricShapes.Word(option.Shape)} may be cheaper than {FabricShapes.Word(options[0].Shape)} after all: the best "
                + $"of it costs {Numerals.Grouped(option.LowerBound.Units, 2)} or more, and what was found "
                + $"{Numerals.Grouped(option.PriceOverYears.Units, 2)}";
    }

    /// <summary>What holds for every option that is called the best: of which designs it is.</summary>
    public const string BoundHolds =
        "'no less than' holds for designs that stand where 'size' places them: leaves in the middle of the racks they serve, or near where "
        + "those are full, upper tiers in the racks kept for them; where hosts are of several kinds, with leaves filled most evenly or by "
        + "whole racks";

    /// <summary>What ports of one host that are in different rails or planes have of each other.</summary>
    public static string Meeting(FabricOption option) => option switch
    {
        { Needs.PortsMeet: false, Shape: FabricShape.Rails } => "rails meet only inside hosts",
        { Needs.PortsMeet: false } => "planes meet only inside hosts",
        { Shape: FabricShape.Rails } => "rails meet in the upper tier",
        _ => "all ports meet",
    };

    /// <summary>What holds for an option whose rails or planes have no switch in common.</summary>
    public const string NoMeeting =
        "where rails or planes meet only inside hosts, no traffic from a port of one to a port of another goes through a switch: hosts "
        + "have to carry it over, and 'load' reports such a demand as one without a path";

    /// <summary>How energy is counted.</summary>
    public const string EnergyCounted =
        "energy is that of switches under a usual load and of modules and active cables at both ends, as in the report, for each year what "
        + "runs in it; what is bought at the end of the last year is paid for and draws none yet";

    /// <summary>A ratio as it is kept and, where that is hard to read, to one.</summary>
    public static string Ratio(Ratio ratio) =>
        ratio.Denominator == 1 ? ratio.ToString() : $"{ratio} ({Numerals.Plain(Math.Round(ratio.Value, 2))}:1)";

    private static string Split(TierUplinks tier) => tier is { LowerMode.Ways: 1, UpperMode.Ways: 1 }
        ? ""
        : $", cages {tier.LowerMode} below and {tier.UpperMode} above";

    private static string Cards(SwitchUse use) =>
        use.Cards.IsEmpty
            ? ""
            : (use.Count == 1 ? " with " : ", each with ")
                + string.Join(" and ", use.Cards.CountBy(c => c.Name).Select(c => $"{Numerals.Whole(c.Value)} x {c.Key}"));
}
