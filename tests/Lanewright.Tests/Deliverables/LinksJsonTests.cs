using System.Text.Json;

namespace Lanewright.Tests.Deliverables;

/// <summary>The links file keeps its shape, whatever became of a link.</summary>
public sealed class LinksJsonTests
{
    [Fact]
    public void ClassWithNothingFound_HasTheKeysOfTheOthers()
    {
        var judged = Delivered.Plan(
            "good: { from: a4, to: b4, rate: 400G, type: 400GBASE-DR4, length: 100 m }",
            "none: { from: a4, to: b4, rate: 400G, type: 800GBASE-DR8, length: 40 m }");
        using var json = JsonDocument.Parse(Delivered.File(judged, "links.json"));
        var classes = json.RootElement.GetProperty("classes").EnumerateArray().ToDictionary(c => c.GetProperty("set").GetString()!);
        Assert.Equal(classes["good"].EnumerateObject().Select(k => k.Name), classes["none"].EnumerateObject().Select(k => k.Name));
        Assert.Equal("", classes["none"].GetProperty("type").GetString());
        Assert.Equal("", classes["none"].GetProperty("name").GetString());
        Assert.Empty(classes["none"].GetProperty("checks").EnumerateArray());
        Assert.Equal("fail", classes["none"].GetProperty("verdict").GetString());
        Assert.NotEmpty(classes["good"].GetProperty("checks").EnumerateArray());
    }

    // 150 m of OM4 at 3.5 dB/km and 1.0 dB of connections are 1.525 dB under a limit printed as 1.5 dB (IEEE 802.3 clause 86, memory).
    [Fact]
    public void SmallNegativeMarginThatPasses_SaysWhy()
    {
        var judged = Delivered.Plan("l: { from: s10, to: t10, rate: 40G, type: 40GBASE-SR4, medium: OM4, length: 150 m, connections: 1, "
            + "connection-loss: 1 dB }");
        using var json = JsonDocument.Parse(Delivered.File(judged, "links.json"));
        var check = json.RootElement.GetProperty("classes")[0].GetProperty("checks").EnumerateArray()
            .Single(c => c.GetProperty("name").GetString() == "channel-loss");
        Assert.Equal(("pass", -0.025), (check.GetProperty("verdict").GetString(), Math.Round(check.GetProperty("margin").GetDouble(), 6)));
        Assert.True(check.GetProperty("conditional").GetBoolean());
        Assert.EndsWith("over the printed limit by less than the step it is rounded to: measure the channel",
            check.GetProperty("note").GetString(), StringComparison.Ordinal);
    }
}
