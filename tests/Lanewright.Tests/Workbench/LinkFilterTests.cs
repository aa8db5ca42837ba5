using System.Text.Json;

namespace Lanewright.Tests.Workbench;

/// <summary>What the filter of links takes, and what it says where it cannot be read.</summary>
public sealed class LinkFilterTests(OpenedDemo demo) : IClassFixture<OpenedDemo>
{
    [Theory]
    [InlineData("margin >= 5.5", "margin>=5.5")]
    [InlineData("margin< 1 dB", "margin<1")]
    [InlineData("Margin >=1 margin < 2 DAC", "margin>=1 margin<2 DAC")]
    public async Task Bound_IsReadHoweverItIsSpaced(string spaced, string close)
    {
        var (total, of, _) = await Rows(close);
        Assert.InRange(total, 1, of - 1);
        Assert.Equal((total, of, ""), await Rows(spaced));
    }

    [Fact]
    public async Task Bounds_PartTheLinksThatHaveAMargin()
    {
        var all = (await Rows("margin>=-1000")).Total;
        foreach (var (one, other) in new[] { ("margin<2.48", "margin>=2.48"), ("margin<=2", "margin>2") })
            Assert.Equal(all, (await Rows(one)).Total + (await Rows(other)).Total);
    }

    [Theory]
    [InlineData("margin<abc", "'margin<abc' compares with no number")]
    [InlineData("DAC margin >", "'margin>' compares with no number")]
    public async Task BoundThatIsNone_IsToldInWords(string filter, string words)
    {
        var (total, _, trouble) = await Rows(filter);
        Assert.Equal(0, total);
        Assert.StartsWith(words, trouble, StringComparison.Ordinal);
    }

    private async Task<(int Total, int Of, string Trouble)> Rows(string filter)
    {
        var (_, text) = await demo.Get($"rows?from=0&count=1&filter={Uri.EscapeDataString(filter)}&sort=");
        using var json = JsonDocument.Parse(text);
        var root = json.RootElement;
        return (root.GetProperty("total").GetInt32(), root.GetProperty("of").GetInt32(), root.GetProperty("trouble").GetString()!);
    }
}
