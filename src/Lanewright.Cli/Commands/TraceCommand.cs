using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Cli.Commands;

/// <summary><c>trace</c>: the whole way of one cable.</summary>
internal static class TraceCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var plan = CommonOptions.Plan();
        var what = new Argument<string>("CABLE|PORT")
        {
            Description = "a cable (C000001), a cord (C000001a), a trunk, a link (L000001), a label, or a port such as leaf-1:3, "
                + "at a panel odf-a:04",
        };
        var json = CommonOptions.Json();
        var command = new Command("trace", "follow one cable from port to port: cords, panels, trunks, and what each costs in dB")
        {
            plan, what, json,
        };
        command.SetAction(parsed => Run(
            CommonOptions.Compile(parsed.GetRequiredValue(plan)), parsed.GetRequiredValue(what), parsed.GetValue(json)));
        return command;
    }

    private static int Run(JudgedPlan judged, string name, bool asJson)
    {
        var designed = CommonOptions.Designed(judged);
        if (NamedLinks.Find(designed, name) is not { } named)
        {
            if (NamedLinks.FindIdle(designed, name) is not { } idle) throw Unknown(designed, name);
            if (asJson) Screen.Document(stream => TraceJson.Write(idle, stream));
            else Print(idle);
            return ExitCodes.NoErrors;
        }
        var traced = TracedCable.Followed(designed, named)
            ?? throw new UsageFault($"nothing is laid for '{name}'; 'lanewright why' shows why no way was found");
        if (asJson) Screen.Document(stream => TraceJson.Write(traced, stream));
        else Print(traced);
        return traced.Legs.Any(l => l.IsPortless || l.Path.Solution.Checks.Any(c => c is
        {
            Name: CheckNames.Polarity or CheckNames.CassetteFit, Verdict: Verdict.Fail,
        }))
            ? ExitCodes.ErrorsFound
            : ExitCodes.NoErrors;
    }

    private static UsageFault Unknown(DesignedPlan designed, string name) => new(NamedLinks.PortOfCage(designed, name) is { } port
        ? $"'{name}' is split into several ports; write one of them, such as {port}"
        : $"the plan has no cable, cord, trunk, link, label or port in use '{name}'; write a cable such as C000001, "
            + "or a port such as leaf-1:3");

    private static void Print(TracedCable traced)
    {
        foreach (var leg in traced.Legs)
        {
            if (leg != traced.Legs[0]) Screen.Line("");
            Print(traced, leg);
        }
    }

    private static void Print(TracedCable traced, TracedLeg leg)
    {
        var (path, sum) = (leg.Path, 0.0);
        if (traced.Of > 1)
            Screen.Line($"{traced.Cable}, leg {Numerals.Whole(leg.Number)} of {Numerals.Whole(traced.Of)}"
                + (traced.Legs.Length == 1 ? $"; 'trace ... {traced.Cable}' shows all" : ""));
        Screen.Print(["what", "which", "where", "dB", "dB so far"], path.Elements.Select(e => (IReadOnlyList<string>)
        [
            e.Kind, e.Id, e.Position, e.Loss is { } loss ? Numerals.Fixed(loss.Value, 2) : "",
            e.Loss is { } more ? Numerals.Fixed(sum += more.Value, 2) : "",
        ]));
        var loss = path.Loss is { } whole ? $", {Numerals.Fixed(whole.Value, 2)} dB for the worst lane" : "";
        Screen.Line($"{traced.Cable}: {path.Length}{loss}, {Checks.Word(leg.Verdict)}");
        foreach (var reason in leg.Reasons) Screen.Line("  " + reason);
        if (path.Polarity is not { } polarity) return;
        Screen.Line($"polarity: {PolarityJson.Polarity(polarity)}");
        if (!polarity.LaneOrder.IsEmpty) Screen.Line("lanes arrive at: " + string.Join(' ', polarity.LaneOrder));
        foreach (var reason in polarity.Reasons.Where(r => !leg.Reasons.Any(said => said.Contains(r, StringComparison.Ordinal))))
            Screen.Line("  " + reason);
        Fibres(path);
        Limits(path);
    }

    private static void Print(IdleTrunk idle)
    {
        Screen.Print(["what", "which", "where"], idle.Elements.Select(e => (IReadOnlyList<string>)[e.Kind, e.Id, e.Position]));
        Screen.Line($"{idle.Trunk.NameOf(idle.Number)}: {idle.Length?.ToString() ?? "length not known"}, "
            + $"{Numerals.Whole(idle.Trunk.Fibres)} x {idle.Trunk.Cable.Fibre}, {idle.Trunk.MethodName}; no link is patched through it");
        Screen.Line($"polarity of a link through it alone: {PolarityJson.Polarity(idle.Polarity)}");
        foreach (var reason in idle.Polarity.Reasons) Screen.Line("  " + reason);
    }

    private static void Fibres(CablePath path)
    {
        if (path.Fibres.IsEmpty) return;
        Screen.Line("");
        Screen.Print(["from", "at", .. path.Patches.Select(p => p.Trunk.NameOf(p.Number)), "arrives", "to"],
            path.Fibres.Select(f => (IReadOnlyList<string>)
            [
                FibreWords.Start(f), FibreWords.Spot(f.Start),
                .. path.Patches.Select((patch, i) => i < f.Hops.Length ? Hop(f.Hops[i], patch) : "-"),
                FibreWords.Spot(f.End), FibreWords.End(f),
            ]));
    }

    private static string Hop(FibreHop hop, TrunkPatch patch)
    {
        var ends = (Near: FibreWords.Spot(hop.Near), Far: FibreWords.Spot(hop.Far));
        if (hop.Fibre == 0) return $"{ends.Near} > {ends.Far}";
        var colour = Deliverables.Drawings.FibreColour.Words(hop.Fibre, patch.Trunk.Fibres);
        return $"{ends.Near} > fibre {Numerals.Whole(hop.Fibre)} {colour} > {ends.Far}";
    }

    /// <summary>The test of the trunks and the limit of the application are two things.</summary>
    private static void Limits(CablePath path)
    {
        Screen.Line("");
        foreach (var test in path.Tests)
        {
            Screen.Line($"cabling test, {test.Title}: "
                + (test.Limit is { } limit
                    ? $"the trunks may show up to {Numerals.Fixed(limit.Value, 2)} dB"
                    : "unproven, the edition gives no value for this fibre"));
        }
        if (path.Allowed is { } most)
            Screen.Line($"application: {path.TypeName} allows {Numerals.Fixed(most, 2)} dB from module to module, cords included"
                + (path.AllowedForTrunks is { } left && !path.Patches.IsEmpty
                    ? $"; that leaves the trunks {Numerals.Fixed(left, 2)} dB"
                    : ""));
    }
}
