namespace Lanewright.Tests.Binding;

/// <summary>What would have no effect, or would fall under the table, is said.</summary>
public sealed class SilentLossTests
{
    [Theory]
    [InlineData("policy: { spares: 5 % }", "policy: { spares: 9 % }", "LW0102")]
    [InlineData("currency: CU", "currency: XU", "LW0102")]
    [InlineData("", "currency: XU", "LW0102")]
    [InlineData("currency: CU", "currency: CU")]
    [InlineData("", "policy: { spares: 9 % }")]
    public void SecondFile_MayNotContradictTheFirst(string first, string second, params string[] codes) =>
        Expect.Codes($"lanewright: 1\n{first}\ninclude: more.yaml\n# file: more.yaml\nlanewright: 1\n{second}\n", codes);

    [Theory]
    [InlineData("pad,Pad,attenuator,5 dB,9\npad,Pad,attenuator,3 dB,9", "LW1102")]
    [InlineData("cord-os2-lc,Pad,attenuator,5 dB,9", "LW1102")]
    [InlineData("pad,Pad,attenuator,5 dB,9\npod,Pad,attenuator,3 dB,9")]
    public void Catalogue_HasOneItemOfAName(string rows, params string[] codes) =>
        Expect.Codes($"lanewright: 1\ncatalogue: own.csv\n# file: own.csv\nsundry,title,kind,value,price\n{rows}\n", codes);

    [Theory]
    [InlineData(5, "att-lc-5", new string[0])]
    [InlineData(2.5, "attenuator 2.5 dB", new[] { "LW2803" })]
    public void StatedAttenuator_IsBoughtForBothReceivers(double loss, string part, string[] codes)
    {
        var judged = Expect.Codes(
            $$"""
            lanewright: 1
            devices: { a: { model: fixed-32x100 }, b: { model: fixed-32x100 } }
            links: { up: { from: a, to: b, rate: 100G, type: 100GBASE-LR4, length: 20 m, attenuator: {{loss}} dB } }
            """,
            codes);
        Assert.Equal(2, judged.Parts.Single(p => p.Item.Name == part).Needed);
    }

    [Fact]
    public void SpareInStock_IsNotBought()
    {
        var judged = PlanBlock.Compile("""
            lanewright: 1
            policy: { spares: 50 % }
            devices: { a: { model: fixed-32x100 }, b: { model: fixed-32x100 } }
            links: { up: { from: a, to: b, rate: 100G, count: 4, assembly: dac-100, length: 1 m } }
            stock: [ { model: dac-100, length: 1 m, quantity: 5 } ]
            """);
        var line = judged.Parts.Single(p => p.Item.Name == "dac-100");
        Assert.Equal((4L, 2L, 5L, 1L), (line.Needed, line.Spares, line.FromStock, line.ToBuy));
    }

    [Fact]
    public void DearestPart_OverflowsNoTotal()
    {
        var judged = PlanBlock.Compile("""
            lanewright: 1
            catalogue: own.csv
            devices: { a: { model: fixed-32x100, count: 100 }, b: { model: fixed-32x100, count: 100 } }
            links: { up: { from: a, to: b, pattern: paired, rate: 100G, count: 32, assembly: gold, length: 1 m } }
            # file: own.csv
            assembly,title,medium,near,far,type,awg,lengths,price,price-per-metre,diameter,plug
            gold,Gold,DAC,QSFP28,QSFP28,100GBASE-CR4,30,1 2 m,9999999999999,9999999999999,6.5 mm,55 mm
            """);
        var line = judged.Parts.Single(p => p.Item.Name == "gold");
        Assert.Equal(2m * 9999999999999m * line.ToBuy, line.Total.Units);
    }
}
