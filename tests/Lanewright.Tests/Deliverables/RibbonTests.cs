using System.Xml.Linq;
using Lanewright.Engineering.Choice;
using Lanewright.Standards;

namespace Lanewright.Tests.Deliverables;

/// <summary>A ribbon has the lanes, fibres and places of the types it shows.</summary>
public sealed class RibbonTests
{
    private const string Fan4 = "f: { from: { of: a4, breakout: 4x100G }, to: a1, pattern: each-to-each, rate: 100G, medium: OS2, length: "
        + "30 m }";

    [Theory]
    [InlineData("l: { from: a4, to: b4, rate: 400G, type: 400GBASE-DR4, length: 100 m }", "400GBASE-DR4", 8)]
    [InlineData("l: { from: a4, to: b4, rate: 400G, type: 400GBASE-FR4, length: 900 m }", "400GBASE-FR4", 8)]
    [InlineData("l: { from: a4, to: b4, rate: 400G, type: 400GBASE-FR8, length: 900 m }", "400GBASE-FR8", 8)]
    [InlineData("l: { from: a4, to: b4, rate: 400G, type: 400GBASE-SR8, length: 40 m, medium: OM4 }", "400GBASE-SR8", 8)]
    [InlineData("l: { from: a4, to: b4, rate: 400G, type: 400GBASE-SR4.2, length: 40 m, medium: OM4 }", "400GBASE-SR4.2", 8)]
    [InlineData("l: { from: a8, to: b8, rate: 800G, type: 800GBASE-DR8, length: 90 m }", "800GBASE-DR8", 8)]
    [InlineData("l: { from: a1, to: b1, rate: 100G, type: 100GBASE-LR4, length: 8 km }", "100GBASE-LR4", 4)]
    [InlineData("l: { from: s10, to: t10, rate: 10G, type: 10GBASE-LR, length: 9 km }", "10GBASE-LR", 1)]
    public void StraightLink_HasLanesFibresAndContactsOfItsType(string link, string typeName, int contacts)
    {
        var drawing = Delivered.Ribbon(Delivered.Plan(link));
        var type = StandardsLibrary.Shipped.Interface(typeName)!;
        Assert.Equal(4 * type.MediaLanes, drawing.WithClass("lane").Length);
        Assert.Equal(2 * type.Fibres, drawing.WithClass("lit").Length);
        Assert.Equal(type.Fibres, drawing.WithClass("strand").Length);
        Assert.Equal(4 * contacts, drawing.WithClass("contact").Length);
        foreach (var window in type.Lanes)
        {
            var words = $"{window.Shortest.Nanometres}-{window.Longest.Nanometres}";
            // Each lane of each end has its wavelengths, leaving and coming.
            Assert.Equal(4 * type.MediaLanes / type.Lanes.Length, drawing.Words().Count(w => w == words));
        }
    }

    [Theory]
    [InlineData("l: { from: a4, to: b4, rate: 400G, type: 400GBASE-DR4, length: 100 m }", 12, 4)]
    [InlineData("l: { from: a8, to: b8, rate: 800G, type: 800GBASE-DR8, length: 90 m }", 16, 0)]
    public void NumberedPlug_CrossesAndKeepsItsMiddleDark(string link, int places, int dark)
    {
        var drawing = Delivered.Ribbon(Delivered.Plan(link));
        Assert.Equal(2 * dark, drawing.WithClass("dark").Length);
        var ends = Places(drawing).GroupBy(p => p.X).OrderBy(g => g.Key).Select(g => g.ToDictionary(p => p.Y, p => p.Number)).ToArray();
        Assert.Equal(2, ends.Length);
        Assert.Equal(places, ends[0].Count);
        foreach (var (y, number) in ends[0]) Assert.Equal(places + 1, number + ends[1][y]);
        var forth = drawing.WithClass("forth").Select(s => Straight(s)).ToArray();
        // What leaves A leaves from the first places, and arrives at the last.
        Assert.Equal(Enumerable.Range(1, (places - dark) / 2), forth.Select(y => ends[0][y]).Order());
    }

    [Fact]
    public void FanOut_ShowsAllFarEndsAndJoinsEachPortToItsOwn()
    {
        var drawing = Delivered.Ribbon(Delivered.Plan(Fan4));
        foreach (var name in new[] { "B1", "B2", "B3", "B4" }) Assert.Contains(name, drawing.Words());
        Assert.Equal(8, drawing.WithClass("strand").Length);
        Assert.Equal(16, drawing.WithClass("lit").Length);
        // Port k leaves by place k and comes back by place 13 - k; both meet the duplex plug of far end k.
        var far = drawing.WithClass("lit").Where(c => c.Real("cx") > 600).OrderBy(c => c.Real("cy")).Select(c => NumberOf(drawing, c))
            .ToArray();
        Assert.Equal([1, 12, 2, 11, 3, 10, 4, 9], far);
    }

    [Fact]
    public void FanOut_OfEightHasEightFarEnds()
    {
        var drawing = Delivered.Ribbon(Delivered.Plan(
            "f: { from: { of: a8, breakout: 8x100G }, to: h1, pattern: each-to-each, count: 2, rate: 100G, medium: OM4, length: 20 m }"));
        Assert.Contains("B8", drawing.Words());
        Assert.Equal(16, drawing.WithClass("strand").Length);
        Assert.Equal(9, drawing.WithClass("port").Length);
    }

    // A cage of eight ports of which four have links: nothing that is not used is drawn or counted.
    [Fact]
    public void FanOut_OfEightWithFourInUse_ShowsFour()
    {
        var drawing = Delivered.Ribbon(Delivered.Plan(
            "f: { from: { of: a8-1, breakout: 8x100G }, to: h1-1..4, pattern: each-to-each, rate: 100G, medium: OS2, length: 20 m }"));
        var words = drawing.Words();
        Assert.Contains("B4", words);
        Assert.DoesNotContain("B5", words);
        Assert.DoesNotContain(words, w => w.Contains("8 x 100G", StringComparison.Ordinal));
        Assert.Contains(words, w => w.StartsWith("4 x 100GBASE-DR: 4 lanes", StringComparison.Ordinal));
        Assert.Contains(words, w => w.StartsWith("4 of the 8 ports of cage A have links", StringComparison.Ordinal));
        Assert.Equal(8, drawing.WithClass("strand").Length);
        Assert.Equal(16, drawing.WithClass("lit").Length);
    }

    // The wavelengths of one module share a fibre: however the cage is split, it is one module with eight lanes in and four out.
    [Fact]
    public void ModuleThatCannotBeSplit_IsDrawnOnce()
    {
        var judged = Delivered.Plan("f: { from: { of: a4-1, breakout: 4x100G, module: m-400g-fr4-dd }, "
            + "to: { of: a1, module: m-100g-cwdm4 }, pattern: each-to-each, rate: 100G, length: 2 m }");
        var words = Delivered.Ribbon(judged).Words();
        Assert.Contains("8 : 4", words);
        Assert.DoesNotContain("32 : 16", words);
        Assert.DoesNotContain(words, w => w.Contains("4 x 400G", StringComparison.Ordinal));
        Assert.Contains(words, w => w.StartsWith("400GAUI-8: 8 lanes", StringComparison.Ordinal));
        foreach (var ladder in Delivered.Ladder(judged).Words()) Assert.DoesNotContain("\u2026", ladder, StringComparison.Ordinal);
        Assert.DoesNotContain(Delivered.Table(judged, "parts.csv"), r => r.Contains("att-", StringComparison.Ordinal));
        Assert.Single(Delivered.Table(judged, "cables.csv"));
    }

    [Theory]
    [InlineData("{ of: a4, breakout: 4x100G }", "a1", "100G", 2, 0, false, "Mated pairs on the way lie in the trunk or in its legs")]
    [InlineData("a4", "b4", "400G", 2, 0, true, "Mated pairs are drawn evenly")]
    [InlineData("a4", "b4", "400G", 2, 1, true, "Splices on the way are counted")]
    [InlineData("a4", "b4", "400G", 6, 0, false, "Mated pairs on the way are counted")]
    public void WhatIsOnTheWay_IsDrawnOrSaidNotToBe(string from, string to, string rate, int pairs, int splices, bool areDrawn, string note)
    {
        var drawing = Delivered.Ribbon(Delivered.Plan($"l: {{ from: {from}, to: {to}, pattern: each-to-each, rate: {rate}, medium: OS2, "
            + $"length: 100 m, connections: {pairs}, splices: {splices}, connection-loss: 0.2 dB }}"));
        Assert.Contains(drawing.Words(), w => w.StartsWith(note, StringComparison.Ordinal));
        Assert.Contains(drawing.Words(), w => w.StartsWith($"{pairs} mated pairs", StringComparison.Ordinal));
        Assert.Equal(areDrawn, drawing.WithClass("mated").Length > 0);
    }

    [Fact]
    public void SplitAtBothEndsAlike_MarksPortsOnBothSides()
    {
        var judged = Delivered.Plan(
            "l: { from: { of: a8, breakout: 2x400G }, to: { of: b8, breakout: 2x400G }, count: 2, rate: 400G, medium: OS2, type: "
                + "800GBASE-DR8, length: 90 m }");
        Assert.Equal(FanShape.Straight, Delivered.OnlyWay(judged).Class.Shape);
        var drawing = Delivered.Ribbon(judged);
        Assert.Equal(16, drawing.WithClass("strand").Length);
        Assert.Equal(4, drawing.Words().Count(w => w == "/1"));
        Assert.Equal(4, drawing.Words().Count(w => w == "/2"));
    }

    [Fact]
    public void Gearbox_IsNamedWithItsLanes()
    {
        var words = Delivered.Ribbon(Delivered.Plan("l: { from: a4, to: b4, rate: 400G, type: 400GBASE-DR4, length: 100 m }")).Words();
        Assert.Equal(2, words.Count(w => w == "gearbox"));
        Assert.Equal(2, words.Count(w => w == "8 : 4"));
        Assert.Contains(words, w => w.Contains("53.125 GBd PAM4", StringComparison.Ordinal));
    }

    [Fact]
    public void CodeOfModule_RunsFromPortToModule()
    {
        var drawing = Delivered.Ribbon(Delivered.Plan(Fan4));
        Assert.Contains("FEC RS(544,514): made and ended in port A and module B", drawing.Words());
        Assert.Contains("no FEC at the port", drawing.Words());
        Assert.Contains(drawing.Words(), w => w.Contains("25.78125 GBd", StringComparison.Ordinal));
    }

    [Fact]
    public void InnerCode_HasADimensionLineOfItsOwn()
    {
        var words = Delivered.Ribbon(Delivered.Plan("l: { from: x16, to: x16, rate: 1600G, length: 50 m, type: 1.6TBASE-DR8-2, pattern: "
            + "each-to-each }")).Words();
        Assert.Contains("inner code: added and ended in the modules", words);
        Assert.Contains(words, w => w.Contains("113.4375 GBd", StringComparison.Ordinal));
        Assert.Equal(2, words.Count(w => w == "+ FEC"));
    }

    [Fact]
    public void BothWaysOnOneFibre_HasOneWavelengthEachWay()
    {
        var drawing = Delivered.Ribbon(Delivered.Plan("l: { from: a4, to: b4, rate: 400G, type: 400GBASE-SR4.2, length: 40 m, medium: OM4 "
            + "}"));
        Assert.Equal(8, drawing.WithClass("both").Length);
        Assert.Empty(drawing.WithClass("forth"));
    }

    [Fact]
    public void PassiveCopper_HasAPairForEachLaneAndDirection()
    {
        var drawing = Delivered.Ribbon(Delivered.Plan(
            "d: { from: { of: a4, breakout: 2x200G }, to: h2, pattern: each-to-each, rate: 200G, medium: DAC, length: 1.5 m }"));
        var lanes = StandardsLibrary.Shipped.Copper("200GBASE-CR4")!.Lanes;
        Assert.Equal(2 * lanes, drawing.WithClass("forth").Length);
        Assert.Equal(2 * lanes, drawing.WithClass("return").Length);
        Assert.Equal(4 * lanes, drawing.WithClass("pair").Length);
        Assert.Contains(drawing.Words(), w => w.Contains("28 AWG", StringComparison.Ordinal));
        Assert.DoesNotContain(drawing.Words(), w => w == "retimer");
    }

    [Theory]
    [InlineData("AEC", "5 m", "retimer")]
    [InlineData("AOC", "20 m", "active optical: light inside")]
    public void ActiveCable_ShowsWhatWorksInside(string medium, string length, string words)
    {
        var drawing = Delivered.Ribbon(Delivered.Plan($"c: {{ from: a4, to: b4, rate: 400G, medium: {medium}, length: {length} }}"));
        Assert.Contains(words, drawing.Words());
        Assert.Equal(16, drawing.WithClass("strand").Length);
        Assert.Empty(drawing.WithClass("place"));
    }

    [Fact]
    public void TwistedPair_CarriesBothDirectionsOnFourPairs()
    {
        var drawing = Delivered.Ribbon(Delivered.Plan("m: { from: h2, to: mg, rate: 1G, medium: CAT6A, length: 5 m, pattern: each-to-each "
            + "}"));
        Assert.Equal(4, drawing.WithClass("both").Length);
        Assert.Contains("RJ45 socket", drawing.Words());
    }

    [Fact]
    public void Receiver_ThatNeedsAnAttenuatorShowsOneForEachDirection()
    {
        var drawing = Delivered.Ribbon(Delivered.Plan("l: { from: s10, to: t10, rate: 10G, type: 10GBASE-ER, length: 500 m }"));
        Assert.Equal(2, drawing.WithClass("attenuator").Length);
    }

    [Fact]
    public void Directions_AreToldApartWithoutColour()
    {
        var drawing = Delivered.Ribbon(Delivered.Plan("l: { from: a4, to: b4, rate: 400G, type: 400GBASE-DR4, length: 100 m }"));
        foreach (var strand in drawing.WithClass("forth"))
        {
            Assert.Empty(strand.WithClass("back"));
            Assert.Equal(2, strand.WithClass("full").Length);
        }
        foreach (var strand in drawing.WithClass("return"))
        {
            Assert.NotEmpty(strand.WithClass("back"));
            Assert.Equal(2, strand.WithClass("hollow").Length);
        }
    }

    [Fact]
    public void MissingCord_IsSaidAndNoFibreIsDrawn()
    {
        var drawing = Delivered.Ribbon(Delivered.Plan(
            "w: { from: { of: a4, module: m-400g-dr4-dd }, to: { of: b4, module: m-400g-fr4-dd }, rate: 400G, length: 30 m }"));
        Assert.Contains("no cord joins these", drawing.Words());
        Assert.Empty(drawing.WithClass("strand"));
        Assert.Empty(drawing.WithClass("lit"));
        Assert.Contains("FAIL", drawing.Words());
    }

    [Fact]
    public void Drawing_IsNamedAndDescribedForThoseWhoDoNotSeeIt()
    {
        var drawing = Delivered.Ribbon(Delivered.Plan("l: { from: a4, to: b4, rate: 400G, type: 400GBASE-DR4, length: 100 m }"));
        var ids = drawing.Attribute("aria-labelledby")!.Value.Split(' ');
        var title = drawing.Element(Delivered.Svg + "title")!;
        var description = drawing.Element(Delivered.Svg + "desc")!;
        Assert.Equal((ids[0], ids[1]), (title.Attribute("id")!.Value, description.Attribute("id")!.Value));
        Assert.Contains("400GBASE-DR4", title.Value, StringComparison.Ordinal);
        Assert.Contains("4 paths from A, 4 paths to A", description.Value, StringComparison.Ordinal);
    }

    /// <summary>Every place with the number written in it.</summary>
    private static List<(double X, double Y, int Number)> Places(XElement drawing) =>
        [.. drawing.WithClass("place").Select(c => (c.Real("cx"), c.Real("cy"), NumberOf(drawing, c)))];

    private static int NumberOf(XElement drawing, XElement circle) => int.Parse(
        drawing.Descendants(Delivered.Svg + "text")
            .Single(t => t.Real("x") == circle.Real("cx") && Math.Abs(t.Real("y") - circle.Real("cy") - 3.5) < 0.1).Value,
        System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The height of a path that runs straight across.</summary>
    private static double Straight(XElement strand)
    {
        var data = strand.Elements(Delivered.Svg + "path").First().Attribute("d")!.Value;
        Assert.Matches("^M[0-9.]+ [0-9.]+H[0-9.]+$", data);
        return double.Parse(data.Split(' ')[1].Split('H')[0], System.Globalization.CultureInfo.InvariantCulture);
    }
}
