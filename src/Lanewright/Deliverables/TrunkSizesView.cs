using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>Which trunks to lay for each group: as planned, the fewest, the cheapest the panels have places for, and each kind by
/// itself.</summary>
public static class TrunkSizesView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => Of(TrunkSizing.Of(designed.Plan, designed.Plant.Value, null));

    /// <summary>The table of a sizing.</summary>
    public static TableView Of(TrunkSizing sizing) => new("trunk-sizes",
    [
        new("trunk", 16), new("answer", 10), new("mix", 40), new("trunks", 7, ColumnKind.Whole), new("ports-used", 10, ColumnKind.Whole),
        new("ports-wanted", 12, ColumnKind.Whole), new("ports", 7, ColumnKind.Whole), new("fibres", 7, ColumnKind.Whole),
        new("lit-today-%", 11, ColumnKind.Real), new("price", 10, ColumnKind.Real), new("proven", 7),
    ], () => sizing.Groups.SelectMany(g => Rows(sizing, g)));

    private static IEnumerable<Cell[]> Rows(TrunkSizing sizing, TrunkProposal group)
    {
        var state = group.State;
        var planned = group.Kinds.FirstOrDefault(k => k.Cable == state.Trunk.Cable);
        yield return
        [
            state.Trunk.Name, "planned", Words(state.Trunk.Count, state.Trunk.Cable.Name), state.Trunk.Count, state.Ports, group.Wanted,
            state.Trunk.Ports, state.Fibres, Math.Round(state.Utilisation.Percent, 1),
            planned is null ? Cell.Empty : (double)(planned.Price * state.Trunk.Count).Units, "",
        ];
        if (group.Fewest is { } fewest) yield return Row(group, "fewest", fewest, "yes");
        if (group.Cheapest is { } cheapest) yield return Row(group, "cheapest", cheapest, sizing.IsExact ? "yes" : "no");
        foreach (var kind in group.Kinds)
            yield return Row(group, Numerals.Whole(kind.Fibres) + " fibres", TrunkFrontier.Alone(kind, group.Wanted), "");
    }

    private static Cell[] Row(TrunkProposal group, string answer, TrunkMix mix, string proven) =>
    [
        group.Trunk.Name, answer, Words(mix), mix.Trunks, group.State.Ports, group.Wanted, mix.Ports, mix.Fibres,
        Math.Round(group.Lit(mix) * 100, 1), (double)mix.Price.Units, proven,
    ];

    /// <summary>A mix in words.</summary>
    public static string Words(TrunkMix mix) => string.Join(" + ", mix.Counts.Select(c => Words(c.Count, c.Kind.Cable.Name)));

    private static string Words(int count, string cable) => $"{Numerals.Whole(count)} x {cable}";
}
