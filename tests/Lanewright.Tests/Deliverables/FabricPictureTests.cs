using System.Xml.Linq;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings.Fabrics;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Tests.Deliverables;

/// <summary>The pictures of sizing show the numbers of the answer, on scales that can be held against one another.</summary>
public sealed class FabricPictureTests
{
    private static readonly Lazy<SizedAnswer> Answer = new(() =>
    {
        var (plan, study) = Asked.Study(Asked.Question(
            "{ hosts: { host: { count: 60, rate: 100G, ports: 2 } }, energy-price: 0.2, overhead: 30 %, years: 3, tiers: 2, "
            + "form-factors: [QSFP28, QSFP-DD, QSFP56] }"));
        return new SizedAnswer(plan, study, Draw(m => OptionSheet.Write(m, plan, study, isFile: true)));
    });

    [Fact]
    public void Bars_AreAsLongAsTheirNumbersSay()
    {
        var options = Answer.Value.Study.Answer.Options;
        Assert.True(options.Length >= 3);
        Proportional("to-buy", o => (double)o.Price.Units);
        Proportional("over-years", o => (double)o.PriceOverYears.Units);
        Proportional("power", o => o.Watts.Value);
        Proportional("rack-units", o => o.RackUnits);
    }

    [Fact]
    public void BothPrices_AreOnOneScale()
    {
        var sheet = Answer.Value.Sheet;
        var option = Answer.Value.Study.Answer.Options[0];
        var ratio = Length(sheet.WithClass("to-buy")[0]) / Length(sheet.WithClass("over-years")[0]);
        Assert.Equal((double)(option.Price.Units / option.PriceOverYears.Units), ratio, 2);
    }

    [Fact]
    public void EveryOption_HasItsNameItsSwitchesAndItsPrice()
    {
        var words = Answer.Value.Sheet.Words().ToList();
        foreach (var (option, i) in Answer.Value.Study.Answer.Options.Select((o, i) => (o, i)))
        {
            Assert.Contains($"{i + 1}  {FabricShapes.Title(option.Shape)}", words);
            Assert.Contains(Numerals.Grouped(option.PriceOverYears.Units), words);
        }
        foreach (var lost in Answer.Value.Study.Answer.Lost)
            Assert.Contains(words, w => w.StartsWith(FabricShapes.Title(lost.Shape) + ": ", StringComparison.Ordinal));
    }

    [Fact]
    public void Chart_HasItsCornersWhereTheAnswerChanges()
    {
        var breakEven = new BreakEven(BreakEvenQuantity.EnergyPrice, 0.2m,
        [
            new BreakEvenStretch(0, 0.25m, FabricShape.Planes, "planes, x", Money.FromUnits(1000), Money.FromUnits(2000)),
            new BreakEvenStretch(0.25m, 1, FabricShape.LeafSpine, "leaf-spine, y", Money.FromUnits(2000), Money.FromUnits(2600)),
        ]);
        var chart = Draw(m => BreakEvenChart.Write(m, Answer.Value.Plan, breakEven, isFile: true));
        var lines = chart.WithClass("heavy");
        var (left, right) = (lines[0].Real("x1"), lines[1].Real("x2"));
        Assert.Equal(left + ((right - left) * 0.25), lines[0].Real("x2"), 1);
        Assert.Equal(lines[0].Real("x2"), lines[1].Real("x1"), 3);
        Assert.Equal(lines[0].Real("y2"), lines[1].Real("y1"), 3);
        // A thousand up to the corner, six hundred beyond it.
        Assert.Equal(1000.0 / 600, (lines[0].Real("y1") - lines[0].Real("y2")) / (lines[1].Real("y1") - lines[1].Real("y2")), 2);
        Assert.Contains(chart.WithClass("act"), l => Math.Abs(l.Real("x1") - (left + ((right - left) * 0.2))) < 0.1);
        Assert.Contains(chart.Words(), w => w.Contains("From 0.25 to 1: leaf-spine, y", StringComparison.Ordinal));
    }

    /// <summary>What is proven of a stretch is no change of the cheapest option.</summary>
    [Fact]
    public void Chart_CountsChangesOfTheCheapestOptionAlone()
    {
        BreakEvenStretch Stretch(decimal from, string name, bool isProven) =>
            new(from, from + 1, FabricShape.LeafSpine, name, Money.FromUnits(1000), Money.FromUnits(1000)) { IsProven = isProven };
        var breakEven = new BreakEven(BreakEvenQuantity.Growth, 2,
            [Stretch(0, "x", true), Stretch(1, "x", false), Stretch(2, "x", true), Stretch(3, "y", false), Stretch(4, "y", true)]);
        var words = Draw(m => BreakEvenChart.Write(m, Answer.Value.Plan, breakEven, isFile: true)).Words();
        Assert.Contains(words, w => w.StartsWith("The cheapest option changes 1 time over", StringComparison.Ordinal));
    }

    /// <summary>The demo's documents tell of every quantity what it would change.</summary>
    [Fact]
    public void Build_DrawsWhatWouldChangeTheAnswer()
    {
        var demo = Lanewright.Compilation.Of(new FolderFiles(Repository.Path("examples", "kestrel-bay")), "plan.yaml");
        var names = Lanewright.Compilation.Deliver(demo).Select(d => d.Name).Where(n => n.Contains("break-even", StringComparison.Ordinal));
        Assert.Equal(
            [.. Enum.GetValues<BreakEvenQuantity>().Select(q => $"drawings/break-even-{BreakEvenWords.Key(q)}.svg")],
            names);
        var report = Delivered.Xml(demo, "report.html");
        var titles = report.Descendants(Delivered.Svg + "title").Select(t => t.Value).ToList();
        Assert.Equal(names.Count(), titles.Count(t => t.StartsWith("What would change the answer", StringComparison.Ordinal)));
        Assert.DoesNotContain(report.Descendants(Delivered.Html + "p"),
            p => p.Value.Contains("with --break-evens finds and draws it", StringComparison.Ordinal));
    }

    [Fact]
    public void NothingThatIsWritten_LeavesTheSheet()
    {
        var sheet = Answer.Value.Sheet;
        foreach (var text in sheet.Descendants(Delivered.Svg + "text"))
        {
            var width = TextWidth(text);
            var anchor = (string?)text.Attribute("class") ?? "";
            var from = text.Real("x") - (anchor.Contains("end", StringComparison.Ordinal) ? width
                : anchor.Contains("mid", StringComparison.Ordinal) ? width / 2 : 0);
            Assert.InRange(from, 0, 1200);
            Assert.InRange(from + width, 0, 1200);
        }
    }

    private static double TextWidth(XElement text) =>
        Lanewright.Deliverables.Drawings.TextFit.Width(text.Value, ((string?)text.Attribute("class") ?? "").Contains("small") ? 10.5 : 12);

    private static void Proportional(string bars, Func<FabricOption, double> number)
    {
        var options = Answer.Value.Study.Answer.Options;
        var lengths = Answer.Value.Sheet.WithClass(bars).Select(Length).ToList();
        Assert.Equal(options.Length, lengths.Count);
        for (var i = 1; i < options.Length; i++)
            Assert.Equal(number(options[i]) / number(options[0]), lengths[i] / lengths[0], 2);
    }

    /// <summary>The length of a bar with all its parts.</summary>
    private static double Length(XElement group) => group.Elements(Delivered.Svg + "rect").Sum(r => r.Real("width"));

    private static XElement Draw(Action<MarkupWriter> draw)
    {
        using var text = new StringWriter();
        draw(new MarkupWriter(text));
        return XElement.Parse(text.ToString());
    }

    private sealed record SizedAnswer(Lanewright.Model.Plan Plan, FabricStudy Study, XElement Sheet);
}
