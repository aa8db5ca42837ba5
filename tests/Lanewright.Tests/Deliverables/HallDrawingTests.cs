using System.Globalization;
using System.Xml.Linq;
using Lanewright.Deliverables.Drawings;

namespace Lanewright.Tests.Deliverables;

/// <summary>Drawings of racks and floors mark what breaks a limit, and their figures are those of the rules.</summary>
public sealed class HallDrawingTests
{
    private static string Hall(string breaker, string weight, int racks = 2) => $$"""
        lanewright: 1
        racks: { small: { units: 12, weight-limit: {{weight}}, power-limit: 60 kW } }
        sites:
          main:
            halls:
              hall:
                exit: { x: 0 m, y: 0 m }
                rows: { A: { racks: {{racks}}, rack: small, y: 0 m }, B: { racks: 1, rack: small, y: 4 m } }
                pathways:
                  over-a: { from: { x: 0 m, y: 0 m }, to: { x: 6 m, y: 0 m }, width: 50 mm, depth: 50 mm }
                  over-b: { from: { x: 0 m, y: 4 m }, to: { x: 6 m, y: 4 m }, width: 50 mm, depth: 50 mm }
                  west: { from: { x: 0 m, y: 0 m }, to: { x: 0 m, y: 4 m }, width: 50 mm, depth: 50 mm }
        power:
          a: { racks: hall/A, volts: 230 V, breaker: {{breaker}} }
          b: { racks: hall/A, volts: 230 V, breaker: {{breaker}} }
        devices:
          host: { model: server-2u, cards: nic-2x200, racks: hall/A/1..{{racks}}, per-rack: 4 }
          leaf: { model: fixed-32x400, racks: hall/B/1 }
        links:
          edge: { from: host, to: { of: leaf, breakout: 2x200G }, pattern: each-to-each, rate: 200G }
        """;

    [Fact]
    public void Elevation_ShowsTheLoadAfterALossAndMarksWhatBreaksALimit()
    {
        var judged = PlanBlock.Compile(Hall("16 A", "10 kg"));
        var designed = Expect.Designed(judged);
        var strip = designed.Strips[0];
        // With one of two feeds lost the other carries all.
        Assert.Equal(strip.Highest.Value * 2, strip.AfterLoss.Value, 1e-9);
        var drawing = Delivered.Xml(judged, "drawings/E01-front.svg");
        var current = $"a {F(strip.Highest.Value)}/{F(strip.AfterLoss.Value)} of {F(strip.Limit.Value)} A";
        Assert.Equal(strip.AfterLoss > strip.Limit, Alerts(drawing).Contains(current));
        Assert.Contains(current, drawing.Words());
        Assert.Contains(Alerts(drawing), w => w.EndsWith("kg of 10 kg", StringComparison.Ordinal));
        // Nothing is marked where nothing is broken.
        var calm = PlanBlock.Compile(Hall("63 A", "900 kg"));
        Assert.DoesNotContain(calm.Findings, f => f.Kind.Code is "LW4301" or "LW4401" or "LW4402");
        Assert.Empty(Alerts(Delivered.Xml(calm, "drawings/E01-front.svg")));
    }

    [Fact]
    public void Elevation_TellsALossThatOverloads()
    {
        var judged = PlanBlock.Compile(Hall("25 A", "900 kg"));
        var strip = Expect.Designed(judged).Strips[0];
        Assert.Equal(strip.AfterLoss > strip.Limit && strip.Highest <= strip.Limit, judged.Findings.Any(f => f.Kind.Code == "LW4402"));
        Assert.Equal(strip.AfterLoss > strip.Limit, Alerts(Delivered.Xml(judged, "drawings/E01-front.svg")).Count > 0);
    }

    [Fact]
    public void Rows_AreSpreadEvenlyOverSheets()
    {
        var judged = PlanBlock.Compile(Hall("63 A", "900 kg", racks: 9));
        var heads = Enumerable.Range(1, 3).Select(n => Delivered.Xml(judged, $"drawings/E0{n}-front.svg")
            .Descendants(Delivered.Svg + "text").Count(t => (string?)t.Attribute("class") == "bold mid"));
        Assert.Equal([5, 4, 1], heads);
    }

    [Fact]
    public void RackFaults_SayHowManyMore()
    {
        var found = PlanBlock.Compile(Hall("63 A", "10 kg")).Findings.First(f => f.Kind.Code == "LW4301");
        Assert.Equal(2, found.Count);
        Assert.Contains("(and 1 more of its row)", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Floor_FiguresMeanWhatColoursMean()
    {
        var judged = PlanBlock.Compile(Hall("63 A", "900 kg"));
        var designed = Expect.Designed(judged);
        var drawing = Delivered.Xml(judged, "drawings/F01-floor.svg");
        foreach (var pathway in designed.Pathways.Value.Fills.GroupBy(f => f.Pathway))
        {
            var most = pathway.Max(f => f.Fill.Value / f.Most(designed.Plan.Standards).Value);
            Assert.Contains(drawing.Words(), w => w.StartsWith(pathway.Key.Name + ":", StringComparison.Ordinal)
                && w.EndsWith($"{(most * 100).ToString("F1", CultureInfo.InvariantCulture)} %", StringComparison.Ordinal));
        }
    }

    // By hand: hosts in two racks and their leaf in a third, each below its own tray, so that a dot lies at the middle of each and no line
    // leads away.
    [Fact]
    public void Floor_ShowsWhereCablesComeDown()
    {
        var drawing = Delivered.Xml(PlanBlock.Compile(Hall("63 A", "900 kg")), "drawings/F01-floor.svg");
        var dots = drawing.Descendants(Delivered.Svg + "circle").Where(c => (string?)c.Attribute("r") == "2").ToList();
        Assert.Equal(3, dots.Count);
        Assert.Equal(2, dots.Select(d => d.Real("cy")).Distinct().Count());
        Assert.Equal(2, dots.Select(d => d.Real("cx")).Distinct().Count());
    }

    // By hand: a tray under another has the lower half of their band, whichever way it is written and named, and the sheet says so.
    [Theory]
    [InlineData("a-under: { from: { x: 0 m, y: 0 m, height: 0.3 m }, to: { x: 6 m, y: 0 m, height: 0.3 m }, width: 50 mm }")]
    [InlineData("under: { from: { x: 6 m, y: 0 m, height: 0.3 m }, to: { x: 1 m, y: 0 m, height: 0.3 m }, width: 50 mm }")]
    public void Floor_DrawsTraysAboveOneAnotherSideBySide(string under)
    {
        var plain = Hall("63 A", "900 kg");
        var stacked = plain.Replace("over-a:", under + "\n          over-a:", StringComparison.Ordinal);
        var (before, after) = (Levels(plain), Levels(stacked));
        Assert.Equal((2, 3), (before.Count, after.Count));
        // The two lie evenly about where the one was: the higher nearer to the top.
        Assert.Equal(before.Min(), (after[0] + after[1]) / 2, 0.02);
        Assert.True(after[1] - after[0] > 4);
        Assert.Contains(Delivered.Xml(PlanBlock.Compile(stacked), "drawings/F01-floor.svg").Words(), w => w.Contains("share a band"));

        static List<double> Levels(string plan) =>
        [
            .. Delivered.Xml(PlanBlock.Compile(plan), "drawings/F01-floor.svg").Descendants(Delivered.Svg + "path")
                .Where(p => (string?)p.Attribute("class") == "rim").Select(p => ((string)p.Attribute("d")!).Split('M', ' ', 'L'))
                .Where(d => d[2] == d[4]).Select(d => double.Parse(d[2], CultureInfo.InvariantCulture)).Distinct().Order(),
        ];
    }

    // Which side fronts are on is marked where a plan says so, and nowhere else.
    [Fact]
    public void Floor_MarksFrontsThatAreStated()
    {
        var plain = Hall("63 A", "900 kg");
        var stated = plain.Replace("rack: small, y: 0 m", "rack: small, y: 0 m, fronts: far", StringComparison.Ordinal);
        Assert.Equal(Fronts(plain) + (2 * 2), Fronts(stated));

        // Each rack twice: below a pathway and over it.
        static int Fronts(string plan) => Delivered.Xml(PlanBlock.Compile(plan), "drawings/F01-floor.svg")
            .Descendants(Delivered.Svg + "line").Count(l => (string?)l.Attribute("class") == "fine");
    }

    [Fact]
    public void Floor_LabelsDoNotCollide()
    {
        var drawing = Delivered.Xml(PlanBlock.Compile(Hall("63 A", "900 kg")), "drawings/F01-floor.svg");
        var boxes = drawing.Descendants(Delivered.Svg + "text")
            .Where(t => ((string?)t.Attribute("class") ?? "").Contains("halo", StringComparison.Ordinal)).Select(Box).ToList();
        Assert.True(boxes.Count >= 6);
        for (var i = 0; i < boxes.Count; i++)
        {
            for (var j = 0; j < i; j++)
                Assert.False(Overlap(boxes[i], boxes[j]), $"'{boxes[i].Text}' and '{boxes[j].Text}'");
        }
    }

    private static (double Left, double Top, double Right, double Bottom, string Text) Box(XElement text)
    {
        var style = ((string?)text.Attribute("class") ?? "").Split(' ');
        var size = style.Contains("small") ? 10.5 : 12;
        var width = TextFit.Width(text.Value, size, style.Contains("bold"));
        var (x, y) = (text.Real("x"), text.Real("y"));
        if (text.Attribute("transform") is not null) return (x - size + 2, y - width, x, y, text.Value);
        var left = x - (style.Contains("end") ? width : 0);
        return (left, y - size + 2, left + width, y, text.Value);
    }

    private static bool Overlap(
        (double Left, double Top, double Right, double Bottom, string) a,
        (double Left, double Top, double Right, double Bottom, string) b) =>
        a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;

    private static List<string> Alerts(XElement drawing) => [.. drawing.Descendants(Delivered.Svg + "text")
        .Where(t => ((string?)t.Attribute("class") ?? "").Split(' ').Contains("alert")).Select(t => t.Value)];

    private static string F(double value) => value.ToString("F1", CultureInfo.InvariantCulture);
}
