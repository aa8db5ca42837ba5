namespace Lanewright.Tests.Binding;

/// <summary>Ports can be named as documents name them, and a name means the same cage.</summary>
public sealed class PortLabelTests
{
    private static string Plan(string ports) => $$"""
        lanewright: 1
        devices:
          host: { model: server-2u, cards: nic-2x200, count: 2 }
          leaf: { model: fixed-32x400 }
        links:
          edge:
            from: { of: host, ports: {{ports}} }
            to: { of: leaf, breakout: 2x200G }
            pattern: each-to-each
            rate: 200G
            length: 2 m
        """;

    [Theory]
    [InlineData("1/1", "1/1")]
    [InlineData("1/2", "1/2")]
    [InlineData("'1/1..1/2'", "1/1")]
    [InlineData("'1/2..2, 1/1'", "1/1")]
    public void LabelOnACard_IsTheCageOfThatName(string ports, string first)
    {
        var judged = PlanBlock.Compile(Plan(ports));
        Assert.DoesNotContain(judged.Findings, f => f.Severity == Findings.Severity.Error);
        var plan = Expect.Designed(judged).Plan;
        var cage = plan.Links.FromPort(0).Cage;
        Assert.Equal(first, plan.Devices.Group(plan.Links.FromDevice(0)).Layout.Slots[cage].Label);
    }

    [Theory]
    [InlineData("2/1", "no port 2/1")]
    [InlineData("1/3", "no port 1/3")]
    public void LabelThatIsNotThere_IsAnError(string ports, string words)
    {
        var found = Assert.Single(PlanBlock.Compile(Plan(ports)).Findings, f => f.Kind.Code == "LW1304");
        Assert.Contains(words, found.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1/2..2/1")]
    [InlineData("1/1/1")]
    [InlineData("1/")]
    [InlineData("0/1")]
    public void TextThatIsNoLabel_DoesNotRead(string ports) =>
        Assert.Contains(PlanBlock.Compile(Plan($"'{ports}'")).Findings, f => f.Kind.Code == "LW0107");
}
