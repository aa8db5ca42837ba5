using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Plant;
using Lanewright.Model.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>Which trunks to lay for each group: as planned, the fewest, the cheapest the panels have places for, and each kind by
/// itself.</summary>
public static class TrunkSizesView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => Of(designed.Books.TrunkSizes.Value);

    /// <summary>The table of a sizing.</summary>
    public static TableView Of(TrunkSizing sizing) => new("trunk-sizes",
    [
        new("trunk", 16), new("answer", 10), new("mix", 40), new("trunks", 7, ColumnKind.Whole), new("ports-used", 10, ColumnKind.Whole),
        new("ports-wanted", 12, ColumnKind.Whole), new("ports", 7, ColumnKind.Whole), new("fibres", 7, ColumnKind.Whole),
        new("lit-today-%", 11, ColumnKind.Real), new("price", 10, ColumnKind.Real), new("proven", 7), new("fits", 40),
    ], () => sizing.Groups.SelectMany(g => Rows(sizing, g)));

    private static IEnumerable<Cell[]> Rows(TrunkSizing sizing, TrunkProposal group)
    {
        var state = group.State;
        yield return
        [
            state.Trunk.Name, "planned", Words(state.Trunk.Count, state.Trunk.Cable.Name), state.Trunk.Count, state.Ports, group.Wanted,
            state.Trunk.Ports, state.Fibres, Math.Round(state.Utilisation.Percent, 1),
            group.Planned is { } planned ? (double)planned.Units : Cell.Empty, "", "",
        ];
        if (group.Fewest is { } fewest) yield return Row(group, "fewest", fewest, "yes", FitOf(sizing, group.Trunk));
        if (group.Cheapest is { } cheapest) yield return Row(group, "cheapest", cheapest, sizing.IsExact ? "yes" : "no", "yes");
        foreach (var kind in group.Kinds)
            yield return Row(group, Numerals.Whole(kind.Fibres) + " fibres", TrunkFrontier.Alone(kind, group.Wanted), "", "");
    }

    private static Cell[] Row(TrunkProposal group, string answer, TrunkMix mix, string proven, string fits) =>
    [
        group.Trunk.Name, answer, Words(mix), mix.Trunks, group.State.Ports, group.Wanted, mix.Ports, mix.Fibres,
        Math.Round(group.Lit(mix) * 100, 1), (double)mix.Price.Units, proven, fits,
    ];

    /// <summary>Whether the panels have places for the fewest, and if not, which has too few.</summary>
    private static string FitOf(TrunkSizing sizing, TrunkGroup trunk) =>
        sizing.Short.FirstOrDefault(s => s.Panel == trunk.From || s.Panel == trunk.To) is { } panel
            ? $"no: {panel.Name} has {Numerals.Whole(panel.Places)} places for {Numerals.Whole(panel.Ends)} ends"
            : "yes";

    /// <summary>A mix in words.</summary>
    public static string Words(TrunkMix mix) => string.Join(" + ", mix.Counts.Select(c => Words(c.Count, c.Kind.Cable.Name)));

    private static string Words(int count, string cable) => $"{Numerals.Whole(count)} x {cable}";
}
