using System.Text.Json;
using Lanewright.Deliverables;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Model.Binding;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Tests.Lines;

/// <summary>What lines cost, and that the ladder of schemes is one of prices.</summary>
public sealed class LinePriceTests
{
    private static readonly Catalogue Shipped = CatalogueBinder.Shipped;

    // Counted by hand: a module at each end of each channel, a multiplexer at each end, and for both directions a booster and a
    // preamplifier.
    [Fact]
    public void Price_IsThatOfModulesMultiplexersAndAmplifiersOfBothDirections()
    {
        var answer = LineLadder.Of(SpanCase.Question(80, 8) with { Catalogue = Shipped });
        decimal Of(string name) => Shipped.Find<ICatalogueItem>(name)!.Price.Units;
        Assert.Equal((16 * Of("line-400zr")) + (2 * Of("line-mux-48")) + (4 * Of("line-edfa")), answer.Price!.Total!.Value.Units);
        Assert.Equal(answer.Price.Total, answer.Tried[^1].Price!.Total);
    }

    // Every scheme and type by itself: none of those that work may cost less than the answer.
    [Theory]
    [InlineData(2, 1, 1)]
    [InlineData(2, 8, 8)]
    [InlineData(20, 4, 4)]
    [InlineData(40, 8, 1)]
    [InlineData(60, 16, 1)]
    [InlineData(80, 8, 1)]
    [InlineData(110, 8, 1)]
    public void Answer_IsTheCheapestThatWorks(double kilometres, int channels, int pairs)
    {
        var asked = SpanCase.Question(kilometres, channels) with { Catalogue = Shipped, Type = null, Pairs = pairs };
        var answer = LineLadder.Of(asked);
        Assert.Equal(Verdict.Pass, answer.Design.Verdict);
        var all = new List<LineDesign?>();
        foreach (var scheme in Enum.GetValues<LineScheme>().Where(s => s != LineScheme.InLine))
        {
            if (scheme <= LineScheme.DenseDirect) all.Add(LineLadder.Try(asked, scheme));
            else
                foreach (var type in asked.Standards.WavelengthTypes.Where(t => t.IsCoherent && t.Rate == asked.Rate))
                    all.Add(CoherentLine.Of(asked with { Type = type }, type, scheme));
        }
        var cheapest = all.OfType<LineDesign>().Where(d => d.Verdict == Verdict.Pass && !IsThin(d))
            .Select(d => LinePrice.Of(Shipped, d)?.Total).OfType<Money>().Min();
        Assert.True(answer.Price!.Total <= cheapest, $"{answer.Price.Total} against {cheapest}");
    }

    [Fact]
    public void PartsThatNobodySells_HaveNoPriceAndAreNotFree()
    {
        using var told = Json("line --length 80km --type OR-800G-131.3GBd-16QAM --channels 8 --json");
        var root = told.RootElement;
        Assert.Equal(JsonValueKind.Null, root.GetProperty("price").ValueKind);
        Assert.Equal("not known", root.GetProperty("priceMark").GetString());
        Assert.Contains("OR-800G-131.3GBd-16QAM module", root.GetProperty("unpriced").EnumerateArray().Select(e => e.GetString()));
        Assert.All(root.GetProperty("tried").EnumerateArray(), t => Assert.Equal(JsonValueKind.Null, t.GetProperty("price").ValueKind));
        var module = root.GetProperty("parts").EnumerateArray().First(p => p.GetProperty("part").GetString()!.EndsWith("module"));
        Assert.Equal(JsonValueKind.Null, module.GetProperty("unitPrice").ValueKind);
        // An amplifier quieter than the one of the catalogue is another.
        using var quiet = Json("line --length 80km --type 400ZR --channels 8 --booster 4.5dB --json");
        Assert.Equal(JsonValueKind.Null, quiet.RootElement.GetProperty("price").ValueKind);
    }

    [Fact]
    public void PartsList_LeavesPricesOutThatNobodyStates()
    {
        var designed = Expect.Designed(PlanBlock.Compile("""
            lanewright: 1
            sites: { a: { }, b: { } }
            spans: { s: { from: a, to: b, length: 80 km } }
            lines: { x: { from: a, to: b, type: OR-800G-131.3GBd-16QAM, channels: 4 } }
            """));
        var missing = Assert.Single(designed.Parts, p => p.IsMissingFromTotal);
        var row = PartsView.Of(designed).Rows().Single(r => r[0].Text == missing.Item.Name);
        Assert.Equal(["", "", "not known"], [row[10].Text, row[11].Text, row[14].Text]);
        Assert.False(row[10].IsNumber || row[11].IsNumber);
        Assert.Contains("1 line of the parts list", PlanSummary.Of(designed).Missing);
    }

    // Essiambre et al., JLT 28 (2010) 662: much gain adds noise of 3 dB by itself.
    [Theory]
    [InlineData("0dB", 2)]
    [InlineData("2.9dB", 2)]
    [InlineData("3dB", 0)]
    public void NoiseFigures_AreNoneThatNoAmplifierHas(string figure, int exit) =>
        Assert.Equal(exit, Program.Run($"line --length 80km --type 400ZR --channels 8 --booster {figure}").Code);

    private static bool IsThin(LineDesign design) =>
        design.Checks.Any(c => c.Name == LineCheckNames.Reserve && c.Verdict == Verdict.Fail);

    private static JsonDocument Json(string command) => JsonDocument.Parse(Program.Run(command).Output);
}
