using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Cli.Commands;

/// <summary><c>trunks</c>: which trunks to lay for the links that are patched, and their growth.</summary>
internal static class TrunksCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var plan = CommonOptions.Plan();
        var growth = new Option<string?>("--growth")
        {
            Description = "what is laid beyond what is in use, such as 25%; what the plan says, or 50%",
        };
        var json = CommonOptions.Json();
        var command = new Command("trunks", "size the trunks between panels: fewest, cheapest, and each number of fibres by itself")
        {
            plan, growth, json,
        };
        command.SetAction(parsed => Run(
            CommonOptions.Compile(parsed.GetRequiredValue(plan)), QuantityOptions.Share(parsed, growth), parsed.GetValue(json)));
        return command;
    }

    private static int Run(JudgedPlan judged, Share? growth, bool asJson)
    {
        var designed = CommonOptions.Designed(judged);
        if (designed.Plan.Trunks.IsEmpty)
            throw new UsageFault("the plan has no trunks; describe panels and trunks between them, and patch links with 'through'"
                + (judged.HasErrors ? ". If it does, they could not be read: 'lanewright check' says why" : ""));
        var sizing = TrunkSizing.Of(designed.Plan, designed.Plant.Value, growth);
        if (asJson) Screen.Document(stream => TrunkSizesJson.Write(sizing, stream));
        else Print(sizing);
        return ExitCodes.NoErrors;
    }

    private static void Print(TrunkSizing sizing)
    {
        foreach (var group in sizing.Groups)
        {
            Screen.Line($"{group.Trunk.Name}: {Numerals.Grouped(group.State.Ports)} ports in use, {Numerals.Grouped(group.Wanted)} wanted "
                + $"with {Numerals.Plain(sizing.GrowthOf(group.Trunk).Percent)} % of growth");
            Screen.Print(["", "mix", "trunks", "ports", "fibres", "lit today", "price"], Rows(group));
        }
        foreach (var panel in sizing.Short)
            Screen.Line($"{panel.Name} has {Numerals.Whole(panel.Places)} places and the fewest trunks of "
                + $"{string.Join(", ", panel.Groups)} have {Numerals.Whole(panel.Ends)} ends there: take a larger panel, or "
                + "one more; these groups are left as they are");
        if (sizing.Groups.Any(g => g.Frontier.Mixes.Any(m => m.Counts.Length > 1)))
            Screen.Line("a mix of two kinds is written as two groups of trunks, and the links as a set through each");
        if (sizing.Price is not { } price) Screen.Line("the cheapest of what fits are shown; not every group has a place");
        else if (sizing.IsExact)
            Screen.Line($"the cheapest cost {price} together; proven");
        else
            Screen.Line($"the cheapest found cost {price} together; nothing costs less than {sizing.Bound}");
    }

    private static IEnumerable<IReadOnlyList<string>> Rows(TrunkProposal group)
    {
        yield return ["planned", $"{Numerals.Whole(group.Trunk.Count)} x {group.Trunk.Cable.Name}", Numerals.Whole(group.Trunk.Count),
            Numerals.Whole(group.Trunk.Ports), Numerals.Whole(group.State.Fibres), Lit(group.State.Utilisation.Value),
            group.Planned?.ToString() ?? ""];
        if (group.Fewest is { } fewest) yield return Row(group, "fewest", fewest);
        if (group.Cheapest is { } cheapest) yield return Row(group, "cheapest", cheapest);
        foreach (var kind in group.Kinds)
            yield return Row(group, Numerals.Whole(kind.Fibres) + " fibres", TrunkFrontier.Alone(kind, group.Wanted));
    }

    private static IReadOnlyList<string> Row(TrunkProposal group, string answer, TrunkMix mix) =>
    [
        answer, TrunkSizesView.Words(mix), Numerals.Whole(mix.Trunks), Numerals.Whole(mix.Ports), Numerals.Whole(mix.Fibres),
        Lit(group.Lit(mix)), mix.Price.ToString(),
    ];

    private static string Lit(double share) => Numerals.Fixed(share * 100, 1) + " %";
}
