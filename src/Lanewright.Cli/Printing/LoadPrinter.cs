using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Engineering.Load;
using Lanewright.Findings;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Cli.Printing;

/// <summary>Prints what networks carry as tables.</summary>
internal static class LoadPrinter
{
    private const int MostBusiest = 8;
    private const int MostFailures = 10;

    /// <summary>Prints all of an answer.</summary>
    public static void Print(LoadAnswer answer)
    {
        var fabric = answer.Fabric;
        Fabric(fabric, answer);
        foreach (var study in answer.Demands)
        {
            Screen.Line("");
            Screen.Line($"{study.Demand.Name}: {LoadWords.About(study)}");
            Demand(study);
            if (answer.Pairs && study.Pairs(LoadAnswer.MostPairs, answer.Seed) is { } pairs) Pairs(study, pairs);
        }
    }

    /// <summary>What could not be read, before anything is said of the rest.</summary>
    public static void PrintFaults(JudgedPlan judged, IReadOnlyCollection<Finding> faults)
    {
        FindingPrinter.Print(Screen.Lines, faults);
        var (left, part) = (judged.Plan?.DemandsLeftOut ?? [], judged.Plan?.DemandsInPart ?? []);
        if (left.Length > 0) Screen.Line($"left out, as they could not be read: {string.Join(", ", left)}");
        if (part.Length > 0) Screen.Line($"studied only in part: {string.Join(", ", part)}");
        Screen.Line("what follows is of the part of the plan that could be read");
        Screen.Line("");
    }

    private static void Fabric(NetworkStudy fabric, LoadAnswer answer)
    {
        Screen.Line($"split {LoadWords.Split(fabric.Rule)}");
        foreach (var tier in fabric.Oversubscription) Screen.Line(LoadSentences.Oversubscription(fabric, tier));
        var bisection = fabric.Bisection;
        Screen.Line($"bisection {Numerals.Shown(bisection.AtLeast.Gigabits, "Gb/s")} each way"
            + (bisection.IsExact ? "" : $" at least, {Numerals.Shown(bisection.AtMost.Gigabits, "Gb/s")} at most: "
                + "between these nothing is proven"));
        if (answer.Worst is { } any)
            Screen.Line($"worst that any traffic can do, {answer.WorstOf}: " + (any.Fabric.WorstInside(any.Case) is { } worst
                ? $"{LinkOf(any.Fabric.Map, worst)} {LoadWords.Percent(worst.Utilisation)} full"
                : "no link between switches is needed"));
        if (LoadSentences.Latency(fabric) is { } latency) Screen.Line(latency);
    }

    private static string LinkOf(FabricMap map, LinkWorstCase worst)
    {
        var ends = map.Graph.Links[worst.Link];
        return worst.FromA ? $"{map.Name(ends.A)} to {map.Name(ends.B)}" : $"{map.Name(ends.B)} to {map.Name(ends.A)}";
    }

    private static void Demand(DemandStudy study)
    {
        Screen.Line($"fullest link {LoadWords.Percent(study.MaxUtilisation)}, "
            + $"fullest host link {LoadWords.Percent(study.MaxAccessUtilisation)}"
            + (study.UnroutedGigabits > 0 ? $", without a path {Numerals.Shown(study.UnroutedGigabits, "Gb/s")}" : ""));
        if (study.Throughput is { } throughput)
            Screen.Line($"it could grow to {Grown(throughput)} under this split"
                + (study.Fabric.Rule != SplitRule.Ideal && study.BestThroughput is { } best
                    ? $", to {Grown(best)} under the best one"
                    : ""));
        if (LoadSentences.Ports(study) is { } ports) Screen.Line(ports);
        if (LoadSentences.Collisions(study) is { } collisions) Screen.Line(collisions);
        if (LoadSentences.Queue(study) is { } queue) Screen.Line(queue);
        if (LoadSentences.Availability(study) is { } availability) Screen.Line(availability);
        Busiest(study);
        Failures(study);
    }

    private static string Grown(Throughput throughput) => Numerals.Plain(Math.Round(throughput.AtLeast.Value, 3)) + " times"
        + (throughput.IsExact ? "" : $" at least and {Numerals.Plain(Math.Round(throughput.AtMost.Value, 3))} at most");

    private static void Busiest(DemandStudy study)
    {
        var busiest = study.Busiest(MostBusiest);
        if (busiest.IsEmpty) return;
        Screen.Print(["fullest links", "parallel", "alike", "rate", "carried", "in use"], busiest.Select(b => (IReadOnlyList<string>)
        [
            LoadWords.Link(study.Fabric.Map, b), Numerals.Whole(b.Parallel), Numerals.Whole(b.ClassSize), b.Rate.ToString(),
            Numerals.Shown(b.Gigabits, "Gb/s"), LoadWords.Percent(b.Utilisation),
        ]));
    }

    private static void Failures(DemandStudy study)
    {
        var steps = FailureStep.Of(study);
        if (steps.IsEmpty && study.IsHose)
            Screen.Line("what the worst traffic does after a failure is not worked out "
                + (study.Fabric.Rule == SplitRule.Ideal ? "under the ideal split" : "for a network of this size"));
        if (steps.IsEmpty) return;
        if (study.IsHose) Screen.Line("after a failure, what the worst traffic does:");
        Screen.Print(
            ["when this fails", "for example", "alike", "hosts cut off", "traffic lost", "fullest link"],
            steps.Take(MostFailures).Select(s => (IReadOnlyList<string>)
            [
                LoadWords.Failure(s.Kind), s.Example, Numerals.Whole(s.Size), Numerals.Whole(s.HostsCut),
                Numerals.Shown(s.LostGigabits, "Gb/s"), LoadWords.Percent(s.Utilisation),
            ]));
        if (steps.Length <= MostFailures) return;
        var rest = steps.Skip(MostFailures).ToList();
        var most = rest[0].HostsCut > 0 ? $"none cuts off more than {rest[0].HostsCut} hosts" : "they cut no hosts off";
        Screen.Line($"and {rest.Count} more kinds, {most}; --json lists all");
        if (FailureStep.Fullest(rest) is { } fullest && fullest.Utilisation > steps.Take(MostFailures).Max(s => s.Utilisation))
            Screen.Line($"the fullest link of all, {LoadWords.Percent(fullest.Utilisation)}, when {LoadWords.Failure(fullest.Kind)} "
                + $"{fullest.Example} fails ({fullest.Size} alike)");
    }

    private static void Pairs(DemandStudy study, FailurePairs pairs)
    {
        var names = string.Join(" and ", pairs.WorstPair.Select(u => LoadWords.Failure(study.Fabric.Failures[u])));
        var how = pairs.IsExact ? "all computed" : $"{Numerals.Grouped(pairs.Evaluated)} of them sampled";
        Screen.Line($"two failures at once: {Numerals.Grouped(pairs.PairCount)} pairs, {how}; "
            + $"worst {(pairs.IsExact ? "" : "of the sample ")}{LoadWords.Percent(pairs.WorstUtilisation)} ({names})");
        Screen.Line($"  overload a link: {Interval(pairs.Overloading)}; cut hosts off: {Interval(pairs.Cutting)}");
    }

    private static string Interval(ShareInterval share) => share.Lower == share.Upper
        ? LoadWords.Percent(share.Estimate)
        : $"{LoadWords.Percent(share.Estimate)} "
            + $"({LoadWords.Percent(share.Lower)} to {LoadWords.Percent(share.Upper)} with 95 % confidence)";
}
