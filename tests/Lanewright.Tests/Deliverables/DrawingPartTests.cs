using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables.Markup;

namespace Lanewright.Tests.Deliverables;

/// <summary>The small parts drawings are made of.</summary>
public sealed class DrawingPartTests
{
    [Fact]
    public void Colours_FollowTheirOrderAndRepeatWithAStripe()
    {
        string[] order = ["blue", "orange", "green", "brown", "slate", "white", "red", "black", "yellow", "violet", "rose", "aqua"];
        for (var fibre = 1; fibre <= 24; fibre++)
        {
            var colour = FibreColour.Of(fibre);
            Assert.Equal(order[(fibre - 1) % 12], colour.Name);
            Assert.Equal(fibre > 12, colour.HasStripe);
            Assert.Equal(fibre > 12, colour.Label.EndsWith('*'));
        }
        Assert.Equal(12, Enumerable.Range(1, 12).Select(f => FibreColour.Of(f).Fill).Distinct().Count());
        Assert.Throws<ArgumentOutOfRangeException>(() => FibreColour.Of(0));
    }

    // The fullest tray of the demo holds six kinds of cable, and there are five shades: no two marks in the legend are alike.
    [Fact]
    public void Marks_OfSixKindsInATray_AllDiffer()
    {
        var judged = Compilation.Of(new FolderFiles(Repository.Path("examples", "kestrel-bay")), "plan.yaml");
        using var stream = new MemoryStream(Delivered.File(judged, "drawings/X01-section.svg"));
        var legend = System.Xml.Linq.XDocument.Load(stream).Descendants(Delivered.Svg + "circle")
            .Where(c => c.Attribute("cx")!.Value == "708")
            .GroupBy(c => c.Attribute("cy")!.Value, c => $"{c.Attribute("class")!.Value} {c.Attribute("r")!.Value}")
            .Select(marks => string.Join(", ", marks)).ToList();
        Assert.Equal(6, legend.Count);
        Assert.Equal(legend.Count, legend.Distinct().Count());
    }

    [Theory]
    [InlineData("400GBASE-DR4 module with gearbox and a title that goes on and on", 120, 2)]
    [InlineData("oneverylongwordwithoutanyplacetobreakitatallandmore", 90, 1)]
    [InlineData("\U0001F50C\U0001F50C\U0001F50C\U0001F50C\U0001F50C\U0001F50C\U0001F50C", 40, 1)]
    [InlineData("short", 200, 3)]
    public void Lines_FitTheirWidthAndCount(string text, double width, int most)
    {
        var lines = TextFit.Lines(text, width, 12, most);
        Assert.InRange(lines.Length, 1, most);
        Assert.All(lines, l => Assert.True(TextFit.Width(l, 12) <= width, $"'{l}' is {TextFit.Width(l, 12)} wide"));
        Assert.All(lines, l => Assert.Equal(l, CleanText.Of(l)));
        Assert.StartsWith(lines[0].TrimEnd('\u2026'), text, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_LoseNothingThatFits()
    {
        const string text = "single-mode fan-out from 12 positions to 4 duplex";
        Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), string.Concat(TextFit.Lines(text, 110, 12))
            .Replace(" ", "", StringComparison.Ordinal));
    }

    [Fact]
    public void Markup_EscapesTextAndAttributes()
    {
        using var text = new StringWriter();
        new MarkupWriter(text).Element("a", "<&>\"'", ("b", "\"<\n&'"));
        Assert.Equal("<a b=\"&quot;&lt;&#10;&amp;&#39;\">&lt;&amp;&gt;&quot;&#39;</a>\n", text.ToString());
    }

    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("tab\tline\n", "tab\tline\n")]
    [InlineData("\u0000\u001F\uFFFE", "\uFFFD\uFFFD\uFFFD")]
    [InlineData("\U0001F50C", "\U0001F50C")]
    public void CleanText_KeepsWhatXmlAllows(string text, string expected) => Assert.Equal(expected, CleanText.Of(text));

    [Fact]
    public void CleanText_ReplacesHalvesOfPairs() => Assert.Equal("a\uFFFDb\uFFFD", CleanText.Of("a" + '\ud83d' + "b" + '\udd0c'));
}
