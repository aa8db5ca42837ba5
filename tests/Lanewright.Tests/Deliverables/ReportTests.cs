using System.Xml.Linq;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables.Report;
using Lanewright.Quantities;

namespace Lanewright.Tests.Deliverables;

/// <summary>The report holds what was found, and says what it leaves out.</summary>
public sealed class ReportTests
{
    private static readonly string[] Mixed =
    [
        "fail: { from: a4, to: b4, rate: 400G, type: 400GBASE-DR4, length: 480 m, connections: 6, connection-loss: 0.75 dB }",
        "fail2: { from: a4, to: b4, rate: 400G, type: 400GBASE-DR4, length: 490 m, connections: 6, connection-loss: 0.75 dB }",
        "good: { from: a4, to: b4, rate: 400G, type: 400GBASE-FR4, length: 900 m }",
        "open: { from: a1, to: b1, rate: 100G, type: 100GBASE-DR, length: 40 m, connections: 4, reflectance: -40 dB }",
        "none: { from: a4, to: b4, rate: 400G, type: 800GBASE-DR8, length: 40 m }",
        "fan: { from: { of: a4, breakout: 2x200G }, to: h2, pattern: each-to-each, rate: 200G, medium: DAC, length: 1.5 m }",
    ];

    [Fact]
    public void EveryFinding_IsThereWithItsPlaceAndMessage()
    {
        var judged = Delivered.Plan(Mixed);
        Assert.True(judged.Findings.Select(f => f.Severity).Distinct().Count() == 3, Expect.Text(judged));
        var rows = Rows(Delivered.Xml(judged, "report.html"));
        foreach (var finding in judged.Findings)
        {
            var at = finding.Span.Position;
            Assert.Contains(rows, r => r[0] == finding.Kind.Code && r[2] == $"{finding.Span.Path}:{at.Line}:{at.Column}"
                && r[3] == finding.Message);
        }
    }

    [Fact]
    public void PlanWithoutAFault_IsNotHeadedByOne()
    {
        var judged = Delivered.Plan("l: { from: a4, to: b4, rate: 400G, type: 400GBASE-DR4, length: 100 m }");
        Assert.DoesNotContain(judged.Findings, f => f.Severity != Lanewright.Findings.Severity.Advice);
        var heading = Delivered.Xml(judged, "report.html").Descendants(Delivered.Html + "h2")
            .First(h => (string?)h.Attribute("id") == "findings");
        Assert.Equal("What was found", heading.Value);
    }

    [Fact]
    public void Errors_ComeBeforeWarningsBeforeAdvice()
    {
        var headings = Delivered.Xml(Delivered.Plan(Mixed), "report.html").Descendants(Delivered.Html + "h3").Select(h => h.Value).Take(3)
            .ToArray();
        Assert.StartsWith("Errors", headings[0], StringComparison.Ordinal);
        Assert.StartsWith("Warnings", headings[1], StringComparison.Ordinal);
        Assert.StartsWith("Advice", headings[2], StringComparison.Ordinal);
    }

    [Fact]
    public void EveryClassAndEveryComparison_IsThere()
    {
        var judged = Delivered.Plan(Mixed);
        var root = Delivered.Xml(judged, "report.html");
        var rows = Rows(root);
        foreach (var choice in judged.Design!.Choices) Assert.Contains(rows, r => r[0] == Identifiers.Class(choice.Class.Index, 0));
        foreach (var way in Delivered.Ways(judged))
        {
            var section = Assert.Single(root.Descendants(Delivered.Html + "section"), s => (string?)s.Attribute("id") == way.Name);
            var own = Rows(section);
            foreach (var check in way.Solution.Checks.Where(c => c.Margin is not null))
                Assert.Contains(own, r => r[0] == check.Name && r[2] == Numerals.Unit(check.Value!.Value, check.Unit)
                    && r[4] == Numerals.Unit(check.Margin!.Value, check.Unit));
            Assert.Equal(Delivered.Files(judged).Keys.Count(k => k.StartsWith($"drawings/{way.Name}-", StringComparison.Ordinal)),
                section.Descendants(Delivered.Svg + "svg").Count());
        }
    }

    [Fact]
    public void ClassesThatShareADrawing_AreListedOnItAndTheirDifferencesAreSaid()
    {
        // Every fourth cage gives more power, so the links fall into classes that are drawn alike.
        var judged = Delivered.Plan("l: { from: a4, to: b4, rate: 400G, type: 400GBASE-DR4, length: 100 m, count: 8 }");
        var way = Delivered.OnlyWay(judged);
        Assert.True(way.Members.Length > 1, "the plan was to make several classes");
        Assert.Contains(string.Join(", ", way.Members.Select(m => m.Name)), Delivered.Ribbon(judged).Words());
        var section = Delivered.Xml(judged, "report.html").Descendants(Delivered.Html + "section").Single(s =>
            (string?)s.Attribute("id") == way.Name);
        foreach (var member in way.Members.Skip(1))
            Assert.Contains(section.Descendants(Delivered.Html + "p"), p =>
                p.Value.StartsWith(member.Name + " differs", StringComparison.Ordinal));
    }

    [Fact]
    public void Totals_AreThoseOfTheSummary()
    {
        var judged = Delivered.Plan(Mixed);
        var summary = PlanSummary.Of(Expect.Designed(judged));
        var root = Delivered.Xml(judged, "report.html");
        var figures = root.Descendants(Delivered.Html + "section").Single(s => (string?)s.Attribute("class") == "figures");
        Assert.Contains(figures.Descendants(Delivered.Html + "div"), d => d.Value == Numerals.Grouped(summary.Failing) + "links fail");
        Assert.True(summary.Failing > 0);
        var total = root.Descendants(Delivered.Html + "tr").Single(r => (string?)r.Attribute("class") == "sum");
        Assert.Contains(total.Elements(Delivered.Html + "td"), d => d.Value == Numerals.Grouped(summary.Price.Units, 2));
    }

    [Fact]
    public void Cautions_AreThere()
    {
        var text = Delivered.Xml(Delivered.Plan(Mixed), "report.html").Value;
        Assert.Contains("Never look into a port", text, StringComparison.Ordinal);
        Assert.Contains("23 kg", text, StringComparison.Ordinal);
        Assert.Contains("licensed persons", text, StringComparison.Ordinal);
        Assert.Contains("server-2u 27 kg", text, StringComparison.Ordinal);
    }

    [Fact]
    public void ManyWays_AreCappedAndTheReportSaysSo()
    {
        const int lengths = HtmlReport.MostWays + 5;
        var links = Enumerable.Range(100, lengths - 1).Select(metres => $"l{metres}: {{ from: a8, to: b8, rate: 800G, type: 800GBASE-DR8, "
            + $"length: {metres} m }}");
        var judged = Delivered.Plan([.. links, "z: { from: a4, to: b4, rate: 400G, type: 400GBASE-DR4, length: 5 km }"]);
        Assert.Equal(lengths, Delivered.Ways(judged).Length);
        var root = Delivered.Xml(judged, "report.html");
        Assert.Equal(HtmlReport.MostWays, root.Descendants(Delivered.Html + "section").Count(s => (string?)s.Attribute("class") == "way"));
        Assert.Contains(root.Descendants(Delivered.Html + "p"), p => p.Value.Contains($"{HtmlReport.MostWays} of {lengths} ways",
            StringComparison.Ordinal));
        // The one that fails comes last in the plan and is shown all the same.
        var failing = Delivered.Ways(judged).Single(w => w.Solution.Verdict == Lanewright.Engineering.Links.Verdict.Fail);
        Assert.Contains(root.Descendants(Delivered.Html + "section"), s => (string?)s.Attribute("id") == failing.Name);
        Assert.Equal(lengths, Delivered.Files(judged).Keys.Count(k => k.EndsWith("-ribbon.svg", StringComparison.Ordinal)));
    }

    [Fact]
    public void PlanThatCannotBeRead_StillGetsAReportOfItsFindings()
    {
        var judged = PlanBlock.Compile("lanewright: [\n");
        Assert.Null(judged.Plan);
        var text = Delivered.Xml(judged, "report.html").Value;
        Assert.NotEmpty(judged.Findings);
        foreach (var finding in judged.Findings) Assert.Contains(finding.Kind.Code, text, StringComparison.Ordinal);
    }

    [Fact]
    public void TwoBuilds_AreByteForByteTheSame()
    {
        var first = Delivered.Files(Delivered.Plan(Mixed));
        var second = Delivered.Files(Delivered.Plan(Mixed));
        Assert.Contains("report.html", first.Keys);
        Assert.Contains("handover.xlsx", first.Keys);
        Assert.Equal(first.Keys, second.Keys);
        foreach (var (name, bytes) in first) Assert.True(bytes.AsSpan().SequenceEqual(second[name]), name + " differs");
    }

    [Fact]
    public void Ways_HoldEveryClassOnce()
    {
        var judged = Delivered.Plan(Mixed);
        var names = Delivered.Ways(judged).SelectMany(w => w.Members).Select(m => m.Name).ToList();
        Assert.Equal(names.Count, names.Distinct().Count());
        Assert.Equal(judged.Design!.Choices.Sum(c => c.Shares.Length), names.Count);
        Assert.Equal(judged.Design.Choices.SelectMany(c => c.Shares).Sum(s => s.Links),
            LinkWays.Of(judged.Plan!, judged.Design).Sum(w => w.Links));
    }

    private static List<string[]> Rows(XElement root) =>
        [.. root.Descendants(Delivered.Html + "tr").Select(r => r.Elements(Delivered.Html + "td").Select(d => d.Value).ToArray())
            .Where(r => r.Length > 4)];
}
