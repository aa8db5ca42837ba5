using System.Collections.Immutable;
using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Load;
using Lanewright.Model.Binding;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Cli.Commands;

/// <summary><c>load</c>: what the networks of a plan carry, whole and broken.</summary>
internal static class LoadCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var plan = CommonOptions.Plan();
        var rule = new Option<string?>("--rule") { Description = "how switches split traffic: per-hop, path-weighted or ideal" };
        var demand = new Option<string?>("--demand") { Description = "one demand of the plan by name" };
        var pairs = new Option<bool>("--pairs") { Description = "also what two failures at once do" };
        var seed = new Option<ulong>("--seed")
        {
            Description = "fixes the sample where there are too many pairs",
            DefaultValueFactory = _ => 1,
        };
        var json = CommonOptions.Json();
        var command = new Command("load", "tell what the networks of a plan carry, whole and with something broken")
        {
            plan, rule, demand, pairs, seed, json,
        };
        command.SetAction(parsed =>
        {
            var split = RuleOf(parsed.GetValue(rule));
            var judged = CommonOptions.Compile(parsed.GetRequiredValue(plan));
            var faults = PlanFaults.OfReading(judged.Findings);
            if (faults.Length > 0 && !parsed.GetValue(json)) LoadPrinter.PrintFaults(judged, faults);
            var asked = Ask(judged, split, parsed.GetValue(demand), parsed.GetValue(pairs), parsed.GetValue(seed));
            var answer = asked with { Errors = faults.Length };
            if (parsed.GetValue(json)) Screen.Document(stream => LoadJson.Write(answer, stream));
            else LoadPrinter.Print(answer);
            // Only what the plan asks for can be answered with no.
            var isAsked = judged.Plan is { Demands.IsEmpty: false };
            var isDenied = isAsked && answer.Demands.Any(d => d.IsOverloaded || d.UnroutedGigabits > 0);
            return isDenied || faults.Length > 0 ? ExitCodes.ErrorsFound : ExitCodes.NoErrors;
        });
        return command;
    }

    private static LoadAnswer Ask(JudgedPlan judged, SplitRule? rule, string? demand, bool pairs, ulong seed)
    {
        var designed = CommonOptions.Designed(judged);
        var study = designed.Load.Asked(designed.Plan, rule);
        if (study.Demands.IsEmpty || study.Demands.All(d => d.Demand.Senders.IsEmpty))
            throw new UsageFault("the plan has no host that is linked to a switch, so nothing is sent");
        if (demand is null) return new LoadAnswer(study.Demands, study.FabricOf(study.Demands[0]), pairs, seed);
        if (study.Demands.FirstOrDefault(d => d.Demand.Name == demand) is { } named)
            return new LoadAnswer(ImmutableArray.Create(named), study.FabricOf(named), pairs, seed);
        if (designed.Plan.DemandsLeftOut.Contains(demand))
            throw new UsageFault($"the demand '{demand}' could not be read; 'lanewright check' says what is wrong with it");
        var known = study.Demands.Select(d => d.Demand.Name).ToList();
        throw new UsageFault($"the plan has no demand '{demand}'{Spelling.DidYouMean(demand, known)}; it has {string.Join(", ", known)}");
    }

    private static SplitRule? RuleOf(string? name)
    {
        if (name is null) return null;
        var known = DemandLanguage.Splits.Select(s => s.Name).ToList();
        if (!known.Contains(name))
            throw new UsageFault($"no split is called '{name}'{Spelling.DidYouMean(name, known)}; known are {string.Join(", ", known)}");
        return LoadStudy.RuleOf(DemandLanguage.Splits.First(s => s.Name == name).Split);
    }
}
