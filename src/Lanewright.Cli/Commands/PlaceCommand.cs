using System.Collections.Immutable;
using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Json;
using Lanewright.Model.Devices;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Cli.Commands;

/// <summary><c>place</c>: where devices and rows should stand so that cables cost least.</summary>
internal static class PlaceCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var plan = CommonOptions.Plan();
        var groups = new Option<string[]>("--group")
        {
            Description = "groups of devices to find places for; without it the highest switches of each network",
            AllowMultipleArgumentsPerToken = true,
        };
        var inRows = new Option<string[]>("--in")
        {
            Description = "rows they may stand in, such as hall/A; without it all of their hall",
            AllowMultipleArgumentsPerToken = true,
        };
        var json = CommonOptions.Json();
        var command = new Command("place", "find where switches and rows should stand so that cables cost least, and what distance costs")
        {
            plan, groups, inRows, json,
        };
        command.SetAction(parsed => Run(CommonOptions.Compile(parsed.GetRequiredValue(plan)), parsed.GetValue(groups) ?? [],
            parsed.GetValue(inRows) ?? [], parsed.GetValue(json)));
        return command;
    }

    private static int Run(JudgedPlan judged, string[] groups, string[] rows, bool asJson)
    {
        if (judged.Designed is not { } designed)
            throw new UsageFault("nothing could be made of the plan; 'lanewright check' shows what stands in the way");
        var known = designed.Plan.Building.Racks.Select(r => $"{r.Hall.Name}/{r.Row}").ToHashSet();
        foreach (var row in rows.Where(r => !known.Contains(r)))
            {
            var some = known.Order(NaturalOrder.Instance).Take(MostNamed);
            throw new UsageFault($"the plan has no row '{row}'; it has {string.Join(", ", some)}");
        }
        var answer = PlacementAnswer.Of(
            designed, Groups(designed, groups), r => rows.Length == 0 || rows.Contains($"{r.Hall.Name}/{r.Row}"));
        if (asJson) Screen.Document(stream => PlacementJson.Write(designed, answer, stream));
        else Print(designed, answer);
        return ExitCodes.NoErrors;
    }

    private static ImmutableArray<DeviceGroup>? Groups(DesignedPlan designed, string[] names)
    {
        if (names.Length == 0) return null;
        var all = designed.Plan.Devices.Groups;
        return [.. names.Select(n => all.FirstOrDefault(g => g.Name == n)
            ?? throw new UsageFault($"the plan has no group '{n}'; it has {string.Join(", ", all.Select(g => g.Name).Take(MostNamed))}"))];
    }

    private static void Print(DesignedPlan designed, PlacementAnswer answer)
    {
        var (plan, unit) = (designed.Plan, designed.Plan.Currency);
        foreach (var placement in answer.Groups)
        {
            Screen.Line($"{plan.Devices.Groups[placement.Group].Name}: {PlacementWords.Of(placement, unit)}");
            Screen.Print(["device", "stands in", "cheapest in", "unproven there"], placement.Moves.Take(MostRows).Select(
                m => (IReadOnlyList<string>)[plan.Devices.Name(m.Device), PlacementWords.Place(m.From), PlacementWords.Place(m.To),
                    PlacementWords.Of(m.To.Gaps)]));
            Screen.Print(["rack", $"cables of the first device, {unit}", "unproven there"], placement.Offers.Take(MostRacks).Select(
                r => (IReadOnlyList<string>)[r.Rack.Name, PlacementWords.Amount(r.Cost), PlacementWords.Of(r.Gaps)]));
        }
        if (answer.WhyNone.Length > 0) Screen.Line(answer.WhyNone);
        foreach (var group in answer.Placeless)
            Screen.Line($"{plan.Devices.Groups[group.Group].Name}: {PlacementWords.Of(group)}");
        foreach (var order in answer.Rows)
            Screen.Line($"rows of {plan.Building.Halls[order.Hall].FullName}: {PlacementWords.Of(order, unit)}");
        Screen.Line("what a link costs by its length:");
        string[] heads = ["links", "from", "to", "medium", "cable", $"{unit} at the shortest", $"{unit} a metre more"];
        Screen.Print(heads, answer.Steps.SelectMany(s =>
            s.Steps.Select(step => (IReadOnlyList<string>)
            [
                s.Link.SetNames, step.From.ToString(), step.To.ToString(), step.Medium, step.Cable, step.First.ToString(),
                step.EachMetre.ToString(),
            ])));
        Screen.Line(PlacementWords.Caution);
    }

    private const int MostNamed = 12;
    private const int MostRows = 32;
    private const int MostRacks = 8;
}
