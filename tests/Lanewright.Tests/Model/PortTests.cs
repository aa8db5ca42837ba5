using Lanewright.Deliverables;
using Lanewright.Model;

namespace Lanewright.Tests.Model;

/// <summary>Patterns and ports.</summary>
public sealed class PortTests
{
    [Fact]
    public void EachToEach_WithItself_IsAFullMesh()
    {
        var plan = Plan("devices: { a: { model: fixed-32x400, count: 4 } }",
            "{ from: a, to: a, pattern: each-to-each, rate: 400G, length: 5 m }");
        Assert.Equal(6, plan.Links.Count);
    }

    [Fact]
    public void Striped_DealsInTurn()
    {
        var plan = Plan("devices: { a: { model: fixed-32x400, count: 3 }, b: { model: fixed-32x400, count: 2 } }",
            "{ from: a, to: b, pattern: striped, count: 3, rate: 400G, length: 5 m }");
        Assert.Equal(
            ["b-1", "b-2", "b-1", "b-2", "b-1", "b-2", "b-1", "b-2", "b-1"],
            Enumerable.Range(0, 9).Select(i => plan.Devices.Name(plan.Links.ToDevice(i))));
    }

    [Fact]
    public void SplitCages_AreFilledBeforeTheNextIsOpened()
    {
        var plan = Plan("devices: { a: { model: server-1u, cards: nic-2x100, count: 6 }, b: { model: fixed-32x400 } }",
            "{ from: a, to: { of: b, breakout: 4x100G }, pattern: each-to-each, rate: 100G, length: 2 m }");
        var labels = new PlaceLabels(plan);
        Assert.Equal(
            ["1/1", "1/2", "1/3", "1/4", "2/1", "2/2"],
            Enumerable.Range(0, 6).Select(i => labels.Port(plan.Links.ToDevice(i), plan.Links.ToPort(i))));
    }

    // The host has a socket of its own beside the ports of its card: what stands on the label is what is printed at the port.
    [Fact]
    public void Label_NamesThePortAsPrinted()
    {
        var plan = Plan("sites: { s: { halls: { h: { rows: { A: { racks: 1 } } } } } }\n"
            + "devices: { a: { model: server-1u, cards: nic-2x100, racks: h/A, unit: 9 }, "
            + "b: { model: fixed-32x400, racks: h/A, unit: 40 } }",
            "{ from: a, to: { of: b, breakout: 4x100G }, pattern: each-to-each, count: 2, rate: 100G }");
        var labels = new PlaceLabels(plan);
        for (var link = 0; link < 2; link++)
        {
            Assert.Equal($"H.A01-09:{labels.Port(0, plan.Links.FromPort(link))}", labels.Place(0, plan.Links.FromPort(link)));
            Assert.Equal($"1/{link + 1}", labels.Port(0, plan.Links.FromPort(link)));
            Assert.Equal($"H.A01-40:01/{link + 1}", labels.Place(1, plan.Links.ToPort(link)));
        }
    }

    [Fact]
    public void OpenSplit_SplitsOnlyAsFarAsNeeded()
    {
        const string Devices = "devices: {{ a: {{ model: server-1u, cards: nic-2x200, count: {0} }}, b: {{ model: fixed-32x400 }} }}";
        const string Link = "{ from: a, to: b, pattern: each-to-each, rate: 200G, length: 2 m }";
        Assert.Equal(1, Plan(string.Format(null, Devices, 32), Link).Links.ToPort(0).Ways);
        Assert.Equal(2, Plan(string.Format(null, Devices, 33), Link).Links.ToPort(0).Ways);
    }

    [Fact]
    public void EightWaySplit_CostsTheNextPort()
    {
        var plan = Plan("devices: { a: { model: fixed-48x100-8x400 }, b: { model: fixed-32x400 } }",
            "{ from: a, to: { of: b, breakout: 8x50G }, count: 9, rate: 50G, length: 2 m }");
        Assert.Equal([0, 0, 0, 0, 0, 0, 0, 0, 2], Enumerable.Range(0, 9).Select(i => (int)plan.Links.ToPort(i).Cage));
    }

    [Fact]
    public void NamedPorts_AreKeptFromOthers()
    {
        var plan = Plan("devices: { a: { model: fixed-32x400 }, b: { model: fixed-32x400 } }",
            "{ from: a, to: b, count: 2, rate: 400G, length: 5 m }, "
            + "z: { from: { of: a, ports: 1 }, to: { of: b, ports: '2' }, rate: 400G, length: 5 m }");
        Assert.Equal([1, 2, 0], Enumerable.Range(0, 3).Select(i => (int)plan.Links.FromPort(i).Cage));
        Assert.Equal([0, 2, 1], Enumerable.Range(0, 3).Select(i => (int)plan.Links.ToPort(i).Cage));
    }

    [Fact]
    public void BlockOfFour_RunsAtOneRate()
    {
        var plan = Plan(
            "devices: { a: { model: server-1u, cards: nic-2x25, count: 2 }, "
            + "c: { model: server-1u, cards: nic-2x10, count: 1 }, b: { model: fixed-48x25-8x100 } }",
            "{ from: a, to: b, pattern: each-to-each, rate: 25G, length: 2 m }, "
            + "z: { from: c, to: b, pattern: each-to-each, rate: 10G, length: 2 m }");
        Assert.Equal([0, 1, 4], Enumerable.Range(0, 3).Select(i => (int)plan.Links.ToPort(i).Cage));
    }

    [Fact]
    public void SocketsGoToSockets()
    {
        var plan = Plan("devices: { a: { model: fixed-48x25-8x100 }, b: { model: fixed-48x1-4x10 } }",
            "{ from: a, to: b, rate: 1G, length: 2 m }");
        Assert.Equal("RJ45", plan.Devices.Group(plan.Links.FromDevice(0)).Layout.Slots[plan.Links.FromPort(0).Cage].Cage.FormFactor.Name);
    }

    private static Plan Plan(string devices, string link) => PlanBlock.Compile($"lanewright: 1\n{devices}\nlinks: {{ l: {link} }}\n").Plan!;
}
