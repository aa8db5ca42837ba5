using System.Globalization;
using System.Xml.Linq;
using Lanewright.Deliverables.Drawings;
using Lanewright.Rules;

namespace Lanewright.Tests.Lines;

/// <summary>Drawings of lines: no text lies over another, however close sites are and however many amplifiers stand on a line.</summary>
public sealed class LineDrawingTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Labels_LieOverNoOther(int seed)
    {
        var random = new Random(seed);
        var sites = string.Join("\n", Enumerable.Range(0, 30).Select(i =>
            $"  place-{i}: {{ east: {random.Next(0, 400)} km, north: {random.Next(0, 300)} km }}"));
        var spans = string.Join("\n", Enumerable.Range(0, 60).Select(i =>
            $"  fibre-{i}: {{ from: place-{i % 30}, to: place-{(i + 1 + random.Next(0, 28)) % 30}, length: {600 + i} km }}"));
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            sites:
            {{sites}}
            spans:
            {{spans}}
            lines: { away: { from: place-0, to: place-9, type: 400ZR, channels: 8, routes: 2 } }
            """);
        var texts = Texts(judged, "M01-map", "halo");
        // Names of sites are never left out, and may run out of room where places crowd; labels of spans are.
        Assert.True(texts.Count(e => !Class(e).Contains("small")) == 30, "every site is named");
        Assert.True(texts.Count > 45, $"{texts.Count}");
        AssertApart(texts);
    }

    [Theory]
    [InlineData("W01a-power")]
    [InlineData("W01a-single-line")]
    public void Texts_OfALongLineLieOverNoOther(string drawing)
    {
        var judged = PlanBlock.Compile("""
            lanewright: 1
            sites: { bay: { }, cape: { }, town: { } }
            spans:
              coast: { from: bay, to: cape, length: 900 km, huts: anywhere, ducts: [quay] }
              moor: { from: cape, to: town, length: 700 km, huts: anywhere }
            lines: { away: { from: bay, to: town, type: OR-200G-63.1GBd-QPSK, channels: 16 } }
            """);
        var texts = Texts(judged, drawing, "mid");
        Assert.True(texts.Count > 12, $"{texts.Count}");
        AssertApart(texts);
    }

    // No amplifier makes up for 700 km of fibre in one span.
    [Theory]
    [InlineData("2 km", "400G; left after the worst cut 0G")]
    [InlineData("700 km", "no route passes, so that it carries nothing")]
    public void LegendOfTheMap_TellsWhatALineCarries(string length, string told)
    {
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            sites: { bay: { }, cape: { } }
            spans: { coast: { from: bay, to: cape, length: {{length}} } }
            lines: { away: { from: bay, to: cape, type: 400ZR, channels: 1 } }
            """);
        var legend = Texts(judged, "M01-map", "").Single(t => t.Value.StartsWith("away: ", StringComparison.Ordinal));
        Assert.EndsWith(told, legend.Value, StringComparison.Ordinal);
    }

    // Of sixty spans with an amplifier behind every few, as many are told as lie in the gap: its length over that of one.
    [Fact]
    public void SpansInTheMiddle_AreCountedOneByOne()
    {
        var sites = string.Join(", ", Enumerable.Range(0, 61).Select(i => $"p{i}: {{ }}"));
        var spans = string.Join("\n", Enumerable.Range(0, 60).Select(i => $"  s{i}: {{ from: p{i}, to: p{i + 1}, length: 20 km }}"));
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            sites: { {{sites}} }
            spans:
            {{spans}}
            lines: { away: { from: p0, to: p60, type: OR-400G-63.1GBd-16QAM, channels: 1 } }
            """);
        var told = Texts(judged, "W01a-power", "mid")
            .Select(t => System.Text.RegularExpressions.Regex.Match(t.Value, "^([0-9]+) more spans, ([0-9 \u202f]+) km"))
            .Single(m => m.Success);
        Assert.Equal(Number(2) / 20, Number(1));

        double Number(int group) => double.Parse(told.Groups[group].Value.Replace("\u202f", "", StringComparison.Ordinal)
            .Replace(" ", "", StringComparison.Ordinal), System.Globalization.CultureInfo.InvariantCulture);
    }

    // Twelve spans of the plan are too many to read one by one: the first and the last are drawn, and the others told by their number.
    [Theory]
    [InlineData("W01a-power", "8 more spans, 960 km")]
    [InlineData("W01a-single-line", "8 more spans")]
    public void SpansInTheMiddle_AreToldByTheirNumber(string drawing, string told)
    {
        var sites = string.Join(", ", Enumerable.Range(0, 13).Select(i => $"p{i}: {{ }}"));
        var spans = string.Join("\n", Enumerable.Range(0, 12).Select(i => $"  s{i}: {{ from: p{i}, to: p{i + 1}, length: 120 km }}"));
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            sites: { {{sites}} }
            spans:
            {{spans}}
            lines: { away: { from: p0, to: p12, type: OR-200G-63.1GBd-QPSK, channels: 8, scheme: coherent-in-line } }
            """);
        var texts = Texts(judged, drawing, "mid");
        Assert.Contains(texts, t => t.Value == told);
        AssertApart(texts);
    }

    // 48 spans of 5 km need two amplifiers: what light passes without one is drawn as one.
    [Theory]
    [InlineData("W01a-power", "in-line 2")]
    [InlineData("W01a-single-line", "s32 to s47, 16 spans")]
    public void SpansThatLightPassesUnamplified_AreDrawnAsOne(string drawing, string told)
    {
        var sites = string.Join(", ", Enumerable.Range(0, 49).Select(i => $"p{i}: {{ }}"));
        var spans = string.Join("\n", Enumerable.Range(0, 48).Select(i => $"  s{i}: {{ from: p{i}, to: p{i + 1}, length: 5 km }}"));
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            sites: { {{sites}} }
            spans:
            {{spans}}
            lines: { away: { from: p0, to: p48, type: OR-400G-63.1GBd-16QAM, channels: 8 } }
            """);
        var texts = Texts(judged, drawing, "mid");
        Assert.Contains(texts, t => t.Value == told);
        AssertApart(texts);
    }

    // Grey optics have levels to draw, and no noise.
    [Fact]
    public void GreyLines_HaveALadderOfLevels()
    {
        var judged = PlanBlock.Compile("""
            lanewright: 1
            sites: { bay: { }, town: { } }
            spans: { coast: { from: bay, to: town, length: 2 km, pairs: 4 } }
            lines: { near: { from: bay, to: town, rate: 400G, channels: 4 } }
            """);
        var texts = Texts(judged, "W01a-power", "small").Select(t => t.Value).ToList();
        Assert.Contains(texts, t => t.StartsWith("needed at the receiver", StringComparison.Ordinal));
        Assert.DoesNotContain(texts, t => t.Contains("over noise", StringComparison.Ordinal));
    }

    private static List<XElement> Texts(JudgedPlan judged, string drawing, string style)
    {
        using var stream = new MemoryStream();
        Compilation.Deliver(judged).Single(d => d.Name == $"drawings/{drawing}.svg").Write(stream);
        stream.Position = 0;
        return [.. XDocument.Load(stream).Descendants().Where(e => e.Name.LocalName == "text" && Class(e).Contains(style))];
    }

    private static void AssertApart(List<XElement> texts)
    {
        var boxes = texts.Select(BoxOf).ToList();
        for (var i = 0; i < boxes.Count; i++)
            for (var k = 0; k < i; k++)
                Assert.False(Meet(boxes[i], boxes[k]), $"{texts[i].Value} lies over {texts[k].Value}");
    }

    private static string[] Class(XElement text) => ((string?)text.Attribute("class") ?? "").Split(' ');

    private static (double Left, double Top, double Right, double Bottom) BoxOf(XElement text)
    {
        var isSmall = Class(text).Contains("small");
        var size = isSmall ? 10.5 : 12;
        double Of(string name) => double.Parse(text.Attribute(name)!.Value, CultureInfo.InvariantCulture);
        var half = TextFit.Width(text.Value, size, bold: !isSmall) / 2;
        return (Of("x") - half, Of("y") - (size * 0.75), Of("x") + half, Of("y") + (size * 0.25));
    }

    private static bool Meet(
        (double Left, double Top, double Right, double Bottom) a, (double Left, double Top, double Right, double Bottom) b) =>
        a.Left < b.Right - 0.2 && b.Left < a.Right - 0.2 && a.Top < b.Bottom && b.Top < a.Bottom;
}
