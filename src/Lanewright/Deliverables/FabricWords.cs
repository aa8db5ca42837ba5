using System.Collections.Immutable;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Catalogues;
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
        $"{Numerals.Whole(use.Count)} x {use.Model.Name}{Cards(use.Cards)} ({Role(use.Role)})";

    /// <summary>How a tier reaches the next.</summary>
    public static string Uplinks(TierUplinks tier) =>
        $"{Numerals.Whole(tier.Uplinks)} x {tier.Rate} to {Numerals.Whole(tier.Uppers)}, {tier.LowerMode} to {tier.UpperMode}, "
        + tier.Achieved;

    private static string Cards(ImmutableArray<CardModel> cards) =>
        cards.IsEmpty
            ? ""
            : " + " + string.Join(" + ", cards.CountBy(c => c.Name).Select(c => $"{Numerals.Whole(c.Value)} x {c.Key}"));
}
