using System.Text.Json;
using Lanewright.Engineering.Lines;
using Lanewright.Quantities;

namespace Lanewright.Tests.Lines;

/// <summary>What an answer tells beside its verdict: prices that fit together, why channels lie where they do, one figure for one
/// thing.</summary>
public sealed class LineAnswerTests
{
    // The dearer module that an end names stands in every price of the ladder, and in what one scheme costs more than another.
    [Fact]
    public void Prices_AreThoseOfTheModulesThatTheEndsTake()
    {
        var (plain, dear) = (Answer(""), Answer(", module: line-400zr-dear"));
        var taken = dear.Tried.Single(t => t.Scheme == dear.Design.Scheme).Price!.Total!.Value;
        Assert.Equal(dear.Price!.Total, taken);
        Assert.Equal(8 * (9000 - 5200), (double)(taken - plain.Price!.Total!.Value).Units);
        var compared = dear.Tried.Where(t => t.Reason.Contains("its parts cost", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(compared);
        Assert.All(compared, t => Assert.Contains(
            $"cost {Numerals.Grouped((t.Price!.Total!.Value - taken).Units)} more", t.Reason, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("--length 40km --type 800ZR --channels 8")]
    [InlineData("--length 80km --type 400ZR --channels 8 --booster no --preamp no")]
    public void WhatIsNotBuilt_HasNoPrice(string asked)
    {
        var all = Json($"line {asked} --json").RootElement.GetProperty("tried").EnumerateArray()
            .Where(t => t.GetProperty("scheme").GetString()!.StartsWith("coherent-", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(all);
        Assert.All(all, t => Assert.Equal(JsonValueKind.Null, t.GetProperty("price").ValueKind));
        Assert.Contains("not built", Program.Run($"line {asked}").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--type 400ZR --spacing 100GHz", 100, "as stated")]
    [InlineData("--type 400ZR", 100, "none is stated: the usual grid")]
    [InlineData("--type 800ZR", 150, "none is stated: the least of 800ZR")]
    [InlineData("--type OR-800G-131.3GBd-16QAM", 162.5, "none is stated: the narrowest slot for OR-800G-131.3GBd-16QAM")]
    public void Spacing_SaysWhyItIsSo(string asked, double gigahertz, string why)
    {
        var root = Json($"line --length 80km --channels 8 {asked} --json").RootElement;
        Assert.Equal(gigahertz, root.GetProperty("spacingGhz").GetDouble());
        Assert.Equal(why, root.GetProperty("spacingWhy").GetString());
    }

    // 99.9995885 % may be rounded up or cut off, but not both.
    [Fact]
    public void Availability_IsOneFigureEverywhere()
    {
        var demo = Repository.Path("examples", "kestrel-bay");
        var number = Json($"line {demo} --json").RootElement.GetProperty("lines")[0].GetProperty("availabilityPercent").GetDouble();
        Assert.Contains($" {Numerals.Fixed(number, 6)} % of the time", Program.Run($"line {demo}").Output, StringComparison.Ordinal);
    }

    private static LineAnswer Answer(string module) => Expect.Designed(PlanBlock.Compile($$"""
        lanewright: 1
        catalogue: [own.yaml]
        sites: { a: { halls: { h: { rows: { A: { racks: 1 } } } } }, b: { halls: { r: { rows: { B: { racks: 1 } } } } } }
        devices:
          edge: { model: fixed-32x400, racks: h/A/1, unit: 30 }
          far: { model: fixed-32x400, racks: r/B/1, unit: 30 }
        spans: { s: { from: a, to: b, length: 10 km } }
        lines:
          x:
            from: a
            to: b
            type: 400ZR
            channels: 8
            from-ports: { of: edge, ports: "4, 8, 12, 16, 20, 24, 28, 32"{{module}} }
            to-ports: { of: far, ports: "4, 8, 12, 16, 20, 24, 28, 32" }
        # file: own.yaml
        modules:
          line-400zr-dear:
            { title: dear, form-factor: QSFP-DD, applications: 400GAUI-8>400ZR, power: 20 W, power-class: 8, price: 9000 }
        """)).Lines.Value.Lines.Single().Routes.Single().Answer;

    private static JsonDocument Json(string command) => JsonDocument.Parse(Program.Run(command).Output);
}
