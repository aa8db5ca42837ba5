using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables.Drawings.Ladder;
using Lanewright.Deliverables.Drawings.Ribbon;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Deliverables.Report;

/// <summary>One way of making links: its drawings, its settings, every comparison, and why others lost.</summary>
internal sealed class ReportWay(MarkupWriter markup, Plan plan, LinkWay way)
{
    /// <summary>Ways that lost, shown at most.</summary>
    public const int MostOthers = 8;

    private readonly Solution solution = way.Solution;

    /// <summary>Writes the section.</summary>
    public void Write()
    {
        markup.Open("section", ("class", "way"), ("id", way.Name));
        markup.Element("h2", $"{way.Name}: {solution.Name}");
        Lead();
        // What is short comes first: it fills the page that a drawing does not fit on.
        Settings();
        Ribbon(RibbonDrawing.IsTall(plan, way));
        Chance();
        Ladder();
        Comparisons();
        Others();
        markup.Close();
    }

    private void Ribbon(bool isTall)
    {
        if (!RibbonDrawing.CanDraw(plan, way))
        {
            markup.Element("p", "No ribbon can be drawn of this way.");
            return;
        }
        markup.Open("figure", ("class", isTall ? "tall" : "ribbon"));
        RibbonDrawing.Write(markup, plan, way, isFile: false);
        markup.Close();
    }

    private void Ladder()
    {
        if (!LadderDrawing.CanDraw(plan, way))
        {
            markup.Element("p", LadderDrawing.WhyNone(way));
            return;
        }
        markup.Open("figure", ("class", "ladder"));
        LadderDrawing.Write(markup, plan, way, isFile: false);
        markup.Close();
    }

    private void Lead()
    {
        var classes = string.Join(", ", way.Members.Select(m => $"{m.Name} ({ReportWords.Count(m.Links, "link", "links")} of "
            + $"{m.Choice.Class.Statement.Name})"));
        markup.Open("p");
        markup.Text($"Stands for {classes}. Verdict: ");
        markup.Inline("b", Checks.Word(solution.Verdict), ("class", solution.Verdict == Verdict.Fail ? "alert" : "calm"));
        markup.Text($", weakest mark of the values used: {Marks.Name(solution.Mark)}. {Numerals.Grouped(solution.Price.Units, 2)} "
            + $"{plan.Currency} and {solution.Power} a link, "
            + $"{Numerals.Plain(Math.Round(solution.Latency.Value.Nanoseconds, 1))} ns in one direction.");
        markup.Close();
    }

    private void Settings()
    {
        markup.Element("h3", "Settings at the ports");
        var table = HtmlTable.Open(markup, "end", "cage", "run as", "in the cage", "FEC at the port", "auto-negotiation");
        Setting(table, "first end", way.Class.From, solution.FromModule?.Name, solution.FromFec);
        Setting(table, "second end", way.Class.To, solution.ToModule?.Name, solution.ToFec);
        table.Close();
    }

    private void Setting(HtmlTable table, string end, EndSpec spec, string? module, string fec) => table.Row(
        end,
        $"{spec.Cage.FormFactor.Name}, {spec.Cage.LanesText}",
        new Model.Catalogues.PortMode(spec.Ways, way.Class.Statement.Rate).ToString(),
        module ?? solution.Cable.Name,
        fec,
        solution.Autonegotiates ? "on" : "off");

    private void Comparisons()
    {
        markup.Element("h3", "Every comparison");
        var table = CheckTable();
        foreach (var check in solution.Checks) Comparison(table, check);
        table.Close();
        foreach (var member in way.Members.Skip(1)) Differences(member);
    }

    private HtmlTable CheckTable() => HtmlTable.Open(
        markup, "|comparison", "end", "#value", "#limit", "#margin", "|verdict", "who sets the limit", "mark", "note");

    private static void Comparison(HtmlTable table, Check check) => table.Row(
        check.Name, EndWord(check.End), ReportWords.Value(check.Value, check.Unit), ReportWords.Value(check.Limit, check.Unit),
        ReportWords.Value(check.Margin, check.Unit), ReportWords.Word(check), ReportWords.Source(check.Source), Marks.Name(check.Mark),
            check.Note);

    private static string EndWord(string end) => end switch { "from" => "first", "to" => "second", _ => "" };

    /// <summary>Classes may share a drawing and still differ in what a drawing does not show, such as the power a cage gives.</summary>
    private void Differences(WayMember member)
    {
        var own = solution.Checks.Select(Words).ToHashSet(StringComparer.Ordinal);
        var others = member.Solution.Checks.Where(c => !own.Contains(Words(c))).ToList();
        var missing = solution.Checks.Length != member.Solution.Checks.Length;
        if (others.Count == 0 && !missing) return;
        markup.Element("p", $"{member.Name} differs{(missing ? " in which comparisons apply" : "")}{(others.Count > 0 ? " in:" : ".")}");
        if (others.Count == 0) return;
        var table = CheckTable();
        foreach (var check in others) Comparison(table, check);
        table.Close();
    }

    private static string Words(Check check) => string.Join('\u001F',
        check.Name, check.End, ReportWords.Value(check.Value, check.Unit), ReportWords.Value(check.Limit, check.Unit),
            Checks.Word(check.Verdict), check.Note);

    private void Chance()
    {
        if (LossExceedance.Of(plan.Policy, plan.Standards, solution) is not { } chance) return;
        markup.Element("h3", "Chance of exceeding the loss limit");
        markup.Element("p", $"With randomly mated connectors of grade {plan.Policy.ConnectionGrade} a link exceeds its loss limit with a "
            + $"chance of {Percent(chance)}. "
            + $"Of {ReportWords.Count(way.Links, "link", "links")}, {Expected(chance * way.Links)} will. "
            + "This is the statistics of the grade alone; the verdict rests on the loss stated for each mated pair.");
    }

    private static string Expected(double links) => links < 0.001 ? "fewer than 0.001" : "about " + Numerals.Plain(Math.Round(links, 3));

    private static string Percent(double chance) => chance < 1e-6 ? "less than 0.0001 %" : Numerals.Unit(chance * 100, "%");

    private void Others()
    {
        var choice = way.Members[0].Choice;
        var others = choice.Candidates.Where(c => choice.Shares.All(s => s.Solution.Name != c.Name)).ToList();
        if (others.Count == 0) return;
        markup.Element("h3", "Why others lost");
        var table = HtmlTable.Open(markup, "way", "|verdict", "#price a link", "#power a link", "lost by");
        foreach (var other in others.Take(MostOthers))
            table.Row(other.Name, ReportWords.Word(other.Verdict), $"{Numerals.Grouped(other.Price.Units, 2)} {plan.Currency}",
                other.Power.ToString(), LostBy.Reason(other, choice.Winner, plan.Currency));
        table.Close();
        if (others.Count > MostOthers) markup.Element("p", $"{Numerals.Grouped(others.Count - MostOthers)} more are in links.json.",
            ("class", "soft"));
    }
}
