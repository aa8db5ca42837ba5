namespace Lanewright.Tests.Binding;

/// <summary>How a side of links names its devices.</summary>
public sealed class DeviceSelectionTests
{
    [Theory]
    [InlineData("a-2..4", 3)]
    [InlineData("a-9..11", 3)]
    [InlineData("a-4..4", 1)]
    [InlineData("[a-1..2, a-7]", 3)]
    [InlineData("a", 12)]
    public void Run_MeansItsDevices(string named, int count) =>
        Assert.Equal(count, Expect.Clean(Plan(named)).Plan?.Links.Count);

    [Theory]
    [InlineData("a-4..2")]
    [InlineData("a-4..13")]
    [InlineData("a-0..3")]
    [InlineData("a..3")]
    [InlineData("a-1..b")]
    [InlineData("a-1..-3")]
    [InlineData("..3")]
    public void RunOfNothing_IsReported(string named) => Expect.Codes(Plan(named), "LW1101");

    private static string Plan(string named) => $$"""
        lanewright: 1
        devices: { a: { model: fixed-32x100, count: 12 }, b: { model: fixed-32x100 } }
        links: { up: { from: {{named}}, to: b, pattern: each-to-each, rate: 100G, length: 2 m } }
        """;
}
