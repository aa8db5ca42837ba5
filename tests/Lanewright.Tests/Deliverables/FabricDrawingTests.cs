using System.Globalization;
using System.Xml.Linq;
using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Deliverables;

/// <summary>Drawings of fabrics say what the study says, stay on their sheet, and stay readable when the fabric is large.</summary>
public sealed class FabricDrawingTests
{
    private const string All = "  all: { kind: all-to-all, among: host }\n";

    [Fact]
    public void SmallFabric_ShowsEverySwitchAndEveryLink()
    {
        var judged = PlanBlock.Compile(LoadPlans.LeafSpine(26, 14, 2, All));
        var drawing = Delivered.Xml(judged, "drawings/D01-load.svg");
        var names = drawing.Words().ToHashSet();
        Assert.All(Enumerable.Range(1, 26), i => Assert.Contains($"leaf-{i}", names));
        Assert.All(Enumerable.Range(1, 14), i => Assert.Contains($"spine-{i}", names));
        // Each leaf to each spine, the hosts of each leaf, and the two samples of the legend's overload.
        Assert.Equal((26 * 14) + 26 + 1, drawing.WithClass("load").Length);
        OnSheet(drawing);
    }

    [Fact]
    public void LargeFabric_ShowsClassesWithTheirNumbers()
    {
        var k = 16;
        var judged = PlanBlock.Compile(LoadPlans.FatTree(k, $"  all: {{ kind: all-to-all, among: {LoadPlans.HostsOfTree(k)} }}\n"));
        var drawing = Delivered.Xml(judged, "drawings/D01-load.svg");
        var words = drawing.Words();
        // One box a tier: all switches of it are alike under this demand.
        foreach (var stem in new[] { "edge-", "agg-", "core-", "host-" })
            Assert.Single(words, w => w.StartsWith(stem, StringComparison.Ordinal) && w.Contains("..", StringComparison.Ordinal));
        Assert.Contains("x 128", words);
        Assert.Contains("x 64", words);
        Assert.Contains(words, w => w.EndsWith("024 links", StringComparison.Ordinal));
        Assert.Equal(3 + 1, drawing.WithClass("load").Length);
        OnSheet(drawing);
    }

    [Fact]
    public void Overload_IsToldByMoreThanColour()
    {
        var calm = Delivered.Xml(PlanBlock.Compile(LoadPlans.LeafSpine(4, 4, 8, All)), "drawings/D01-load.svg");
        var full = Delivered.Xml(PlanBlock.Compile(LoadPlans.LeafSpine(4, 2, 12, All)), "drawings/D01-load.svg");
        // The light core of the legend's sample, and one on each of the eight overloaded links.
        Assert.Single(calm.WithClass("gap"));
        Assert.Equal(1 + 8, full.WithClass("gap").Length);
        // D/S is 3, and 36 of 47 other hosts are elsewhere.
        Assert.Contains("230 %", full.Words());
    }

    /// <summary>A word over its bar stands clear of the limit and of the level while all works.</summary>
    [Fact]
    public void Words_AreNotStruckThrough()
    {
        var demo = Compilation.Of(new FolderFiles(Repository.Path("examples", "kestrel-bay")), "plan.yaml");
        var drawing = Delivered.Xml(demo, "drawings/D05-failures.svg");
        double[] lines = [.. drawing.Elements(Delivered.Svg + "line")
            .Where(l => l.Attribute("class")?.Value is "act" or "fine broken").Select(l => l.Real("y1"))];
        Assert.Equal(2, lines.Length);
        var words = drawing.Elements(Delivered.Svg + "text").Where(t => t.Attribute("class")?.Value == "small"
            && t.Attribute("transform") is not null).ToList();
        Assert.NotEmpty(words);
        foreach (var word in words)
            Assert.DoesNotContain(lines, l => word.Real("y") > l && word.Real("y") - TextFit.Width(word.Value, 10.5) < l);
    }

    [Fact]
    public void Curve_HasAStepForEachClass_TheFullestLinkFirst()
    {
        var judged = PlanBlock.Compile(LoadPlans.LeafSpine(4, 4, 8, "  shift: { kind: permutation, among: host }\n"));
        var drawing = Delivered.Xml(judged, "drawings/D01-failures.svg");
        var study = Expect.Designed(judged).Load.Demands[0];
        var bars = drawing.Elements(Delivered.Svg + "rect").Where(r => r.Attribute("fill") is not null).ToList();
        var different = study.Sweep!.Classes.Select(c => (c.Kind, Tenths: Math.Round(c.MaxUtilisation.Percent, 1), c.HostsLost)).Distinct()
            .ToList();
        // A bar a step, and one more that hangs down for each that cuts hosts off.
        var cutting = different.Count(d => d.HostsLost > 0);
        Assert.Equal(different.Count + cutting, bars.Count);
        var hanging = bars.Skip(different.Count).Select(b => b.Real("height")).ToList();
        // A leaf with eight hosts is lost, or one host.
        Assert.Equal(8, hanging.Max() / hanging.Min(), 0.01);
        var heights = bars.Take(different.Count).Select(b => b.Real("height")).ToList();
        Assert.Equal(heights.OrderDescending(), heights);
        // All works at 100 %, and so it does with one host gone.
        var gone = bars.Skip(different.Count).Select(b => b.Real("x")).ToHashSet();
        var highest = bars.Take(different.Count).Where(b => gone.Contains(b.Real("x"))).Max(b => b.Real("height"));
        Assert.Equal(4 / 3.0, heights[0] / highest, 0.01);
        Assert.Contains("limit 100 %", drawing.Words());
        Assert.Contains("133 %", drawing.Words());
        OnSheet(drawing);
    }

    /// <summary>The highest bar says what it is, and the table lists it beside what cuts off most hosts.</summary>
    [Fact]
    public void Curve_NamesItsWorstFailure()
    {
        var demo = Compilation.Of(new FolderFiles(Repository.Path("examples", "kestrel-bay")), "plan.yaml");
        var steps = FailureStep.Of(Expect.Designed(demo).Load.Demands[4]);
        var worst = steps.MaxBy(s => s.Utilisation)!;
        var drawing = Delivered.Xml(demo, "drawings/D05-failures.svg");
        var words = drawing.Words().ToList();
        Assert.Contains(words, w => w.StartsWith($"1  rack {worst.Example}: 320 %", StringComparison.Ordinal));
        Assert.Contains(worst.Example, words);
        Assert.Contains(steps[0].Example, words);
        var heights = drawing.Elements(Delivered.Svg + "rect").Where(r => r.Attribute("fill") is not null).Select(r => r.Real("height"));
        var curve = heights.Take(steps.Length).ToList();
        Assert.Equal(curve.OrderDescending(), curve);
    }

    [Fact]
    public void ReportOfAPlanWithDemands_HoldsTheDrawings()
    {
        var judged = Compilation.Of(new FolderFiles(Repository.Path("tests", "plans", "loads")), "plan.yaml");
        var report = Delivered.Xml(judged, "report.html");
        var section = report.Descendants(Delivered.Html + "h2").Single(h => (string?)h.Attribute("id") == "load");
        Assert.Equal("What the network carries", section.Value);
        // Four demands are drawn, and three of them have failures: a hose stands for any traffic.
        var titles = report.Descendants(Delivered.Svg + "title").Select(t => t.Value).ToList();
        Assert.Equal(4, titles.Count(t => t.StartsWith("Load of", StringComparison.Ordinal)));
        Assert.Equal(3, titles.Count(t => t.StartsWith("Single failures", StringComparison.Ordinal)));
    }

    [Fact]
    public void NamesOfAnyKind_CannotBecomeMarkup()
    {
        var plan = LoadPlans.LeafSpine(4, 4, 2, "  '<b>&\"': { kind: all-to-all, among: host }\n");
        var judged = PlanBlock.Compile(plan);
        Assert.Contains("Load of '<b>&\"'", Delivered.Xml(judged, "drawings/D01-load.svg").Words());
        Assert.NotNull(Delivered.Xml(judged, "drawings/D01-failures.svg"));
        Assert.NotNull(Delivered.Xml(judged, "report.html"));
    }

    /// <summary>No text reaches beyond the paper, reckoned as wide as it may become.</summary>
    private static void OnSheet(XElement drawing)
    {
        var box = drawing.Attribute("viewBox")!.Value.Split(' ').Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray();
        foreach (var text in drawing.Descendants(Delivered.Svg + "text").Where(t => t.Attribute("transform") is null))
        {
            var style = ((string?)text.Attribute("class") ?? "").Split(' ');
            var size = style.Contains("title") ? 19 : style.Contains("sub") ? 13
                : style.Contains("small") ? 10.5 : style.Contains("tiny") ? 9.5 : 12;
            var width = TextFit.Width(text.Value, size, style.Contains("bold"));
            var left = text.Real("x") - (style.Contains("end") ? width : style.Contains("mid") ? width / 2 : 0);
            Assert.True(left >= 0 && left + width <= box[2] + 4, $"'{text.Value}' from {left} to {left + width}");
            Assert.InRange(text.Real("y"), 0, box[3]);
        }
    }
}
