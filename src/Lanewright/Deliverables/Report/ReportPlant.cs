using Lanewright.Deliverables.Drawings.Panels;
using Lanewright.Deliverables.Drawings.Trace;
using Lanewright.Deliverables.Json;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Report;

/// <summary>The part of the report about cabling between panels: trunks and what they carry, what their test may show and what the
/// applications leave them, sizes, fronts of panels, and the way of one light path.</summary>
internal sealed class ReportPlant(MarkupWriter markup, DesignedPlan designed)
{
    /// <summary>Where the section begins.</summary>
    public const string Anchor = "plant";

    /// <summary>What it is called.</summary>
    public const string Heading = "Cabling between panels";

    private const int MostRows = 60;
    private const int MostPanels = 2;
    private const int MostTraces = 2;

    /// <summary>Writes it.</summary>
    public void Write()
    {
        if (designed.Plan.Trunks.IsEmpty) return;
        markup.Element("h2", Heading, ("id", Anchor));
        markup.Element("p", "Never look into a fibre or a port, whatever is said to be switched off; ends are inspected with a camera, and "
            + "caps stay on what is free. Links are made, tested and handed over by trained persons; site rules prevail.",
            ("class", "soft"));
        Trunks();
        Tests();
        Sizes();
        Fronts();
        Traces();
    }

    private void Trunks()
    {
        markup.Element("h3", "Trunks");
        var table = HtmlTable.Open(markup, "trunks", "#count", "cable", "#length", "from", "to", "method", "polarity", "verdict",
            "#ports in use", "#ports", "#fibres lit", "#spare", "#lost", "#lit");
        var devices = designed.Plan.Devices;
        foreach (var state in designed.Plant.Value.Trunks.Take(MostRows))
        {
            var trunk = state.Trunk;
            table.Row(trunk.Name, Numerals.Grouped(trunk.Count), trunk.Cable.Name, state.Length?.ToString() ?? "unproven",
                devices.Name(trunk.From), devices.Name(trunk.To), trunk.MethodName, PolarityJson.Polarity(state.Polarity),
                ReportWords.Word(TrunksView.VerdictOf(designed, state)), Numerals.Grouped(state.Ports), Numerals.Grouped(trunk.Ports),
                Numerals.Grouped(state.FibresLit), Numerals.Grouped(state.Spare), Numerals.Grouped(state.Lost),
                Numerals.Fixed(state.Utilisation.Percent, 1) + " %");
        }
        table.Close();
        ReportWords.Left(markup, designed.Plan.Trunks.Length - MostRows, "trunks.csv holds all");
        markup.Element("p", "Spare fibres lie behind free ports and can be patched. Lost ones are dark for good: the positions of a "
            + "patched array that its modules do not use.", ("class", "soft"));
    }

    /// <summary>Passing the test of the cabling and carrying the application are two things: the smaller limit decides.</summary>
    private void Tests()
    {
        markup.Element("h3", "What the test may show, and what the application leaves");
        var editions = designed.Plan.Standards.CablingEditions.ToList();
        string[] headings =
        [
            "trunks", .. editions.Select(e => $"#test, {TestLimit.TitleOf(e)}, dB"), "tightest type", "#allows, dB", "#channel, dB",
            "#trunk reckoned, dB", "#trunk may show, dB", "what to test against",
        ];
        var table = HtmlTable.Open(markup, headings);
        foreach (var state in designed.Plant.Value.Trunks.Take(MostRows))
        {
            var budget = designed.Books.TrunkBudgets.Value[state.Trunk.Index];
            LinkedText[] row =
            [
                state.Trunk.Name,
                .. editions.Select(e => state.Tests.FirstOrDefault(t => t.Edition == e)?.Limit is { } limit
                    ? Decibels(limit.Value)
                    : ReportWords.Unproven),
                budget?.Type ?? "", Decibels(budget?.Allowed), Decibels(budget?.Channel), Decibels(budget?.Trunk),
                Decibels(budget?.TrunkMost), Advice(state, budget),
            ];
            table.Row(row);
        }
        table.Close();
        markup.Element("p", "The test goes from panel to panel with the pairs at both ends, and an edition's limit is that of its "
            + "components. The application counts from module to module: what it allows, less cords and reserves, is what the trunk may "
            + "show.",
            ("class", "soft"));
    }

    private static string Advice(TrunkState state, TrunkBudget? budget)
    {
        if (budget is null) return "";
        var known = state.Tests.Where(t => t.Limit is not null).ToList();
        var enough = known.Where(t => t.Limit?.Value <= budget.TrunkMost).Select(t => t.Title).ToList();
        if (budget.TrunkMost < budget.Trunk) return "no test makes it carry the application";
        return enough.Count == known.Count && known.Count > 0 ? "any that gives a limit"
            : enough.Count > 0 ? $"{string.Join(" or ", enough)}, or {Decibels(budget.TrunkMost)} dB"
            : $"{Decibels(budget.TrunkMost)} dB: a pass by the standard alone proves nothing";
    }

    private void Sizes()
    {
        var sizing = designed.Books.TrunkSizes.Value;
        if (sizing.Groups.IsEmpty) return;
        markup.Element("h3", "Sizes of trunks");
        var unit = designed.Plan.Currency;
        var table = HtmlTable.Open(markup, "trunks", "#ports in use", "#wanted", "planned", $"#{unit}", "fewest", $"#{unit}",
            "cheapest with places", $"#{unit}");
        foreach (var group in sizing.Groups.Take(MostRows))
        {
            table.Row(group.Trunk.Name, Numerals.Grouped(group.State.Ports), Numerals.Grouped(group.Wanted),
                $"{Numerals.Whole(group.Trunk.Count)} x {group.Trunk.Cable.Name}", group.Planned?.ToString() ?? "",
                Words(group.Fewest), group.Fewest?.Price.ToString() ?? "", Words(group.Cheapest), group.Cheapest?.Price.ToString() ?? "");
        }
        table.Close();
        foreach (var panel in sizing.Short)
            markup.Element("p", $"{panel.Name} has {Numerals.Whole(panel.Places)} places, and the fewest trunks of "
                + $"{string.Join(", ", panel.Groups)} have {Numerals.Whole(panel.Ends)} ends there.");
    }

    private void Fronts()
    {
        var (fronts, number) = (designed.Plant.Value.Fronts.Value, 0);
        foreach (var panels in PanelSet.Sheets(designed, fronts).Take(MostPanels))
        {
            markup.Open("figure", ("class", "ribbon"));
            new PanelDrawing(designed, fronts, panels).Write(markup, Identifiers.Panels(++number), isFile: false);
            markup.Close();
        }
    }

    /// <summary>The ways that fail first, then those that cannot be proved.</summary>
    private void Traces()
    {
        var ways = TraceSet.Ways(designed).Select((w, i) => (Way: w, Number: i + 1)).ToList();
        foreach (var (way, number) in ways.OrderByDescending(w => VerdictOf(w.Way.FirstLink)).ThenBy(w => w.Number).Take(MostTraces))
        {
            if (TraceSet.Followed(designed, way) is not { } cable) continue;
            markup.Open("figure", ("class", "ribbon"));
            new TraceDrawing(designed.Plan, TraceSet.NameOf(number), cable).Write(markup, isFile: false);
            markup.Close();
        }
        ReportWords.Left(markup, ways.Count - MostTraces, ways.Count <= TraceSet.MostDrawn
            ? "the folder drawings/ holds the ways through all trunks"
            : $"the folder drawings/ holds the first {Numerals.Whole(TraceSet.MostDrawn)}");
    }

    private Verdict VerdictOf(int link) => designed.Plant.Value.IsPortless(link) || designed.Design.SolutionOf(link) is not { } solution
        ? Verdict.Fail
        : solution.Verdict;

    private static string Words(TrunkMix? mix) => mix is null ? "" : TrunkSizesView.Words(mix);

    private static string Decibels(double? value) => value is { } known ? Numerals.Fixed(known, 2) : "";
}
