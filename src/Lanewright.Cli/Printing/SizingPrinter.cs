using System.Collections.Immutable;
using Lanewright.Deliverables;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Cli.Printing;

/// <summary>Prints what fabric to buy: options side by side, why other shapes lost, what stands in the way, what would change it.</summary>
internal static class SizingPrinter
{
    /// <summary>Prints a study without what would change the answer.</summary>
    public static void Print(FabricStudy study, string currency)
    {
        if (study.Answer.Options.IsEmpty) Screen.Line("nothing fits");
        else Options(study.Answer.Options, currency);
        Lost(study.Answer.Lost);
        Conflicts(study);
    }

    /// <summary>Prints what would change the answer.</summary>
    public static void PrintBreakEvens(FabricStudy study, string currency)
    {
        foreach (var breakEven in study.BreakEvens) BreakEven(breakEven, currency);
    }

    private static void Options(ImmutableArray<FabricOption> options, string currency)
    {
        string[] header = ["", .. options.Select((o, i) => $"{Numerals.Whole(i + 1)} {FabricShapes.Word(o.Shape)}")];
        Screen.Print(header,
        [
            Row("tiers", o => Numerals.Whole(o.Tiers)),
            Row("switches", o => string.Join('\n', o.Switches.Select(FabricWords.Switches))),
            Row("uplinks", o => string.Join('\n', o.Uplinks.Select(FabricWords.Uplinks))),
            Row("hosts, ports", o => $"{Numerals.Grouped(o.Hosts)}, {Numerals.Grouped(o.HostPorts)}"),
            Row("ports used, free", o => $"{Numerals.Grouped(o.Switches.Sum(s => s.PortsUsed))}, "
                + Numerals.Grouped(o.Switches.Sum(s => s.PortsFree))),
            Row("links between switches", o => Numerals.Grouped(o.FabricLinks)),
            Row("modules", o => Numerals.Grouped(o.Modules)),
            Row("cables", o => Numerals.Grouped(o.Cables)),
            Row(currency + " to buy", o => Numerals.Grouped(o.Price.Units, 2)),
            Row(currency + " over the years", o => Numerals.Grouped(o.PriceOverYears.Units, 2)),
            Row("dearer than the cheapest by", o => Numerals.Grouped((o.PriceOverYears - options[0].PriceOverYears).Units, 2)),
            Row("no less than", o => Numerals.Grouped(o.LowerBound.Units, 2)),
            Row("proven gap", o => o.Gap.ToString()),
            Row("W", o => Numerals.Grouped((decimal)o.Watts.Value)),
            Row("rack units, after the last year", o => $"{Numerals.Grouped(o.RackUnits)}, {Numerals.Grouped(o.Needs.RackUnits)}"),
            Row("hosts it can still grow by", o => Numerals.Grouped(o.GrowthLeft)),
            Row("modules for faster lanes", o => Serving(o.NextLaneRate.ModulesServing, o.NextLaneRate.Modules)),
            Row("fibres for faster lanes", o => Serving(o.NextLaneRate.FibresServing, o.NextLaneRate.Fibres)),
            Row("ports of a host", FabricWords.Meeting),
        ]);
        foreach (var line in FabricWords.FasterLanes(options)) Screen.Line(line);
        foreach (var open in FabricWords.NotSettled(options)) Screen.Line(open);
        Screen.Line(FabricWords.BoundHolds);
        Screen.Line(FabricWords.EnergyCounted);
        if (options.Any(o => !o.Needs.PortsMeet)) Screen.Line(FabricWords.NoMeeting);

        IReadOnlyList<string> Row(string what, Func<FabricOption, string> cell) => [what, .. options.Select(cell)];
    }

    private static string Serving(long serving, long all) => $"{Numerals.Grouped(serving)} of {Numerals.Grouped(all)}";

    private static void Lost(ImmutableArray<ShapeLost> lost)
    {
        if (lost.IsEmpty) return;
        Screen.Print(["shape", "lost by"], lost.Select(l => (IReadOnlyList<string>)[FabricShapes.Word(l.Shape), l.Reason]));
    }

    private static void Conflicts(FabricStudy study)
    {
        foreach (var sentence in WishWords.Sentences(study)) Screen.Line(sentence);
        if (study.Relaxations.IsEmpty) return;
        if (!study.IsProven) Screen.Line(WishWords.Unproven);
        Screen.Print(["wish", "wanted", "possible, the others kept", "by"],
            study.Relaxations.Select(r => (IReadOnlyList<string>)
                [r.Wish.Key, r.Wish.Text, r.Possible ?? "not by this wish alone", r.By]));
    }

    private static void BreakEven(BreakEven breakEven, string currency)
    {
        var quantity = breakEven.Quantity;
        Screen.Line($"{BreakEvenWords.Title(quantity, currency)}, now {BreakEvenWords.Value(quantity, breakEven.Now)}");
        Screen.Print(["from", "to", "cheapest", currency + " over the years"],
            BreakEvenTurns.Told(breakEven).Select(s => (IReadOnlyList<string>)
            [
                BreakEvenWords.Value(quantity, s.From), BreakEvenWords.Value(quantity, s.To),
                BreakEvenWords.Cheapest(s),
                s.Shape is null ? "" : BreakEvenWords.Cost(s),
            ]));
        Screen.Line(BreakEvenWords.Proof(breakEven));
    }
}
