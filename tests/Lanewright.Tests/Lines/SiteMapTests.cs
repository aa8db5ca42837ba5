using System.Globalization;
using System.Xml.Linq;
using Lanewright.Deliverables.Drawings;

namespace Lanewright.Tests.Lines;

/// <summary>The map of sites: no name or label lies over another, however close the sites are.</summary>
public sealed class SiteMapTests
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
        using var stream = new MemoryStream();
        Compilation.Deliver(judged).Single(d => d.Name == "drawings/M01-map.svg").Write(stream);
        stream.Position = 0;
        var texts = XDocument.Load(stream).Descendants().Where(e => e.Name.LocalName == "text" && Class(e).Contains("halo")).ToList();
        var boxes = texts.Select(BoxOf).ToList();
        // Names of sites are never left out, and may run out of room where places crowd; labels of spans are.
        Assert.True(texts.Count(e => !Class(e).Contains("small")) == 30, "every site is named");
        Assert.True(texts.Count > 45, $"{texts.Count}");
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
