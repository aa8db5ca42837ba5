using System.Text.Json;

namespace Lanewright.Tests.Workbench;

/// <summary>The names that the editor offers: each place is one of the plan language, and what is offered is a name it takes.</summary>
public sealed class NamesThatFitTests(OpenedDemo demo) : IClassFixture<OpenedDemo>
{
    [Theory]
    [InlineData("devices/x/model", "fixed-32x4", "fixed-32x400", "fixed-32x40")]
    [InlineData("devices/x/racks", "survey/A", "survey/A/1..8")]
    [InlineData("devices/x/feeds", "", "dome-a", "storage-b")]
    [InlineData("trunks/x/from", "odf", "odf-bay")]
    [InlineData("trunks/x/cable", "trunk", "trunk-os2-12")]
    [InlineData("links/x/from/of", "spine", "spine", "spine-1", "wspine")]
    [InlineData("links/x/through", "", "headland")]
    [InlineData("links/x/type", "400GBASE-DR", "400GBASE-DR4")]
    [InlineData("lines/x/from", "", "bay", "vault", "cairn")]
    [InlineData("demands/x/with", "", "night")]
    [InlineData("stock/model", "dac-", "dac-400-4x100")]
    public async Task Place_OffersWhatIsCalledSo(string place, string begun, params string[] expected)
    {
        var names = await At(place, begun);
        foreach (var name in expected) Assert.Contains(name, names);
        Assert.All(names, n => Assert.Contains(begun, n, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("policy/connection-loss")]
    [InlineData("devices/x")]
    [InlineData("")]
    public async Task PlaceWithoutNames_OffersNone(string place) => Assert.Empty(await At(place, ""));

    private async Task<List<string>> At(string place, string begun)
    {
        var way = string.Join('&', place.Split('/').Select(k => "at=" + Uri.EscapeDataString(k)));
        using var json = JsonDocument.Parse((await demo.Get($"names?{way}&begun={Uri.EscapeDataString(begun)}")).Text);
        return [.. json.RootElement.EnumerateArray().Select(n => n.GetProperty("name").GetString()!)];
    }
}
