using System.Globalization;
using System.Text.RegularExpressions;
using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Quantities;

namespace Lanewright.Tests.Workbench;

/// <summary>The inks of the style sheet on each of its papers, and words on the colours of loads. Held against WCAG 2.2, success criteria
/// 1.4.3 and 1.4.11; the ratio itself against the values that the definition gives for black on white and for equal colours.</summary>
public sealed class ContrastTests(OpenedDemo demo) : IClassFixture<OpenedDemo>
{
    [Fact]
    public void Ratio_IsThatOfTheDefinition()
    {
        Assert.Equal(21, Contrast.Of("#000000", "#ffffff"), 6);
        Assert.Equal(1, Contrast.Of("#5c6168", "#5c6168"), 6);
        // The lightest grey that passes on white, known to whoever has tried it (common practice).
        Assert.True(Contrast.Of("#767676", "#ffffff") >= Contrast.LeastOfText);
        Assert.True(Contrast.Of("#777777", "#ffffff") < Contrast.LeastOfText);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Inks_AreReadOnEveryPaper(bool isDark)
    {
        var colours = await Colours(isDark);
        foreach (var ink in new[] { "ink", "soft", "accent" })
            foreach (var paper in new[] { "paper", "white", "block" })
                AtLeast(Contrast.LeastOfText, colours[ink], colours[paper], $"{ink} on {paper}");
        AtLeast(Contrast.LeastOfText, colours["on-accent"], colours["accent"], "words on the accent");
        AtLeast(Contrast.LeastOfText, colours["paper"], colours["ink"], "the sheet chosen in the list");
        AtLeast(Contrast.LeastOfShapes, colours["accent"], colours["paper"], "shapes in the accent");
        AtLeast(Contrast.LeastOfShapes, colours["dim"], colours["paper"], "the rim of what is drawn in a colour of the scale");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Loads_StandOutFromPaperAndWordsFromLoads(bool isDark)
    {
        var colours = await Colours(isDark);
        for (var step = 0; step <= LoadColour.Steps; step++)
        {
            // On dark paper the scale is turned round by drawings.css.
            var of = (isDark ? LoadColour.Steps - step : step) / (double)LoadColour.Steps;
            var fill = LoadColour.Of(Share.From(of));
            var load = step / (double)LoadColour.Steps;
            if (load <= 0.325) AtLeast(Contrast.LeastOfText, colours["ink"], fill, $"a word on {load}");
            if (load > 0.575) AtLeast(Contrast.LeastOfText, colours["white"], fill, $"a word on {load}");
            if (load >= 0.6) AtLeast(Contrast.LeastOfShapes, fill, colours["paper"], $"a load of {load}");
        }
    }

    [Fact]
    public async Task Drawings_TakeTheInksOfThePage()
    {
        var (_, style) = await demo.Get("assets/drawings.css");
        foreach (var (from, to) in new[] { (0, LoadColour.Steps), (LoadColour.Steps, 0) })
            Assert.Contains($"[fill='{At(from)}'] {{ fill: {At(to)} }}", style, StringComparison.Ordinal);
        Assert.DoesNotContain("fill:#22262b", style, StringComparison.Ordinal);

        static string At(int step) => LoadColour.Of(Share.From(step / (double)LoadColour.Steps));
    }

    private static void AtLeast(double least, string one, string other, string what)
    {
        var ratio = Contrast.Of(one, other);
        Assert.True(ratio >= least, $"{what}: {ratio.ToString("F2", CultureInfo.InvariantCulture)} ({one} and {other})");
    }

    /// <summary>The colours as the style sheet has them: those of dark paper lie over those of light.</summary>
    private async Task<Dictionary<string, string>> Colours(bool isDark)
    {
        var (_, style) = await demo.Get("assets/workbench.css");
        var roots = Regex.Matches(style, @":root \{(?<body>[^}]*)\}");
        var colours = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var root in isDark ? roots.Take(2) : roots.Take(1))
            foreach (Match pair in Regex.Matches(root.Groups["body"].Value, @"--(?<name>[\w-]+): (?<colour>#[0-9a-f]{6})"))
                colours[pair.Groups["name"].Value] = pair.Groups["colour"].Value;
        return colours;
    }
}
