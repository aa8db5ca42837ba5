using System.Text.Json;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Power;
using Lanewright.Rules;

namespace Lanewright.Tests.Lines;

/// <summary>Lines among the other links of a plan: ports, cages, cords, power and documents.</summary>
public sealed class LinePortTests
{
    private const string Sound = """
        lanewright: 1
        sites:
          bay: { halls: { hall: { rows: { A: { racks: 2 } } } } }
          cape: { }
          town: { halls: { room: { rows: { B: { racks: 2 } } } } }
        devices:
          edge: { model: fixed-32x400, racks: hall/A/1..2, unit: 30 }
          far: { model: fixed-32x400, racks: room/B/1..2, unit: 30 }
          shelf: { model: line-shelf-2u, racks: hall/A/1..2, unit: 40 }
          far-shelf: { model: line-shelf-2u, racks: room/B/1..2, unit: 40 }
          odf: { model: panel-1u-12, racks: hall/A/1, unit: 44 }
          far-odf: { model: panel-1u-12, racks: room/B/1, unit: 44 }
        spans:
          coast: { from: bay, to: town, length: 78 km, measured-loss: 17 dB, ducts: [quay] }
          inland: { from: bay, to: cape, length: 50 km, measured-loss: 11 dB, ducts: [rail] }
          hills: { from: cape, to: town, length: 45 km, measured-loss: 10 dB }
        lines:
          away:
            from: bay
            to: town
            type: 400ZR
            channels: 4
            routes: 2
            from-ports: { of: edge, ports: "4, 8, 12, 16" }
            to-ports: { of: far, ports: "4, 8, 12, 16" }
            from-shelf: shelf
            to-shelf: far-shelf
            from-panel: odf
            to-panel: far-odf
        """;

    [Fact]
    public void SoundPlan_IsClean() => Expect.Clean(Sound);

    [Theory]
    [InlineData("ports: \"4, 8, 12, 16\" }\n", "ports: 1..4 }\n", "LW5136")]
    [InlineData("    from-ports: { of: edge, ports: \"4, 8, 12, 16\" }\n", "", "LW1701")]
    [InlineData("from-ports: { of: edge", "from-ports: { of: far", "LW1701")]
    [InlineData("from-shelf: shelf", "from-shelf: far-shelf", "LW1701")]
    [InlineData("from-shelf: shelf", "from-shelf: shelv", "LW1101")]
    [InlineData("of: edge, ports", "of: edge, module: m-400g-dr4-dd, ports", "LW5136")]
    [InlineData("of: edge, ports: \"4, 8, 12, 16\"", "of: edge, ports: \"4, 8, 12\"", "LW1302")]
    [InlineData("of: edge, ports: \"4, 8, 12, 16\"", "of: edge, ports: \"4, 8, 12, 99\"", "LW1304")]
    public void Fault_IsFoundWhereItStands(string right, string wrong, string code)
    {
        Assert.Contains(right, Sound, StringComparison.Ordinal);
        var at = Sound.IndexOf(right, StringComparison.Ordinal);
        var plan = Sound[..at] + wrong + Sound[(at + right.Length)..];
        Assert.Contains(PlanBlock.Compile(plan).Findings, f => f.Kind.Code == code);
    }

    [Fact]
    public void PortOfALink_IsTakenForALine()
    {
        var plan = Sound.Replace("spans:\n", """
            links: { cross: { from: { of: edge-1, ports: 4 }, to: { of: edge-2, ports: 1 }, rate: 400G } }
            spans:

            """, StringComparison.Ordinal);
        var finding = Assert.Single(PlanBlock.Compile(plan).Findings, f => f.Severity == Findings.Severity.Error);
        Assert.Equal("LW1303", finding.Kind.Code);
        Assert.Contains("cross", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Routes_SitOnDevicesOfTheirOwn()
    {
        var designed = Designed();
        var ports = designed.Plan.LinePorts;
        Assert.Equal(8, ports.Length);
        Assert.All(ports, p => Assert.Equal(p.Route == 0 ? "edge-1" : "edge-2", designed.Plan.Devices.Name(p.FromDevice)));
        Assert.Equal(ports.Length, ports.Select(p => (p.FromDevice, p.FromPort.Cage)).Distinct().Count());
    }

    [Fact]
    public void Modules_AreBoughtDrawnAndCooledOnce()
    {
        var designed = Designed();
        Assert.Equal(16, designed.Parts.Single(p => p.Item.Name == "line-400zr").Needed);
        var power = ModulePower.Of(designed.Plan, designed.Design, designed.Lines);
        var edge = designed.Plan.Devices.Groups.Single(g => g.Name == "edge");
        var shelf = designed.Plan.Devices.Groups.Single(g => g.Name == "shelf");
        // Four modules of 20 W on each device; two amplifiers of 25 W at each end of a route (catalogue, invented).
        Assert.Equal((80, 80), (power.Of(edge.First).Value, power.Of(edge.First + 1).Value));
        var ends = designed.Lines.Value.Lines.Single().Routes.Select(r => r.Answer.Design.Amplifiers.Count(a => a.Place.Length > 0
            && !a.Place.StartsWith("in-line", StringComparison.Ordinal)) * 25.0);
        Assert.Equal(ends, [power.Of(shelf.First).Value, power.Of(shelf.First + 1).Value]);
    }

    [Fact]
    public void Cords_LeadFromEveryModuleToThePanel()
    {
        var designed = Designed();
        var cords = designed.Lines.Value.Cords;
        foreach (var port in designed.Plan.LinePorts)
        {
            foreach (var (device, place) in new[] { (port.FromDevice, port.FromPort), (port.ToDevice, port.ToPort) })
            {
                var first = Assert.Single(cords, c => c.From.Device == device && c.From.Port == place);
                var route = cords.Where(c => c.Route == port.Route && c.From.Site == first.From.Site).ToList();
                // From the multiplexer on, ends meet until the panel.
                var here = route.Single(c => c.From.What == "multiplexer line").To;
                if (here.What == "amplifiers") here = route.Single(c => c.From.What == "amplifiers").To;
                Assert.StartsWith("span ", here.What);
            }
        }
        Assert.All(cords, c => Assert.True(c.Ordered >= c.Way));
        Assert.Equal(cords.Length, cords.Select(c => (c.Line, c.Route, c.Number)).Distinct().Count());
        // The site between is passed with a cord and no amplifier, or with two and one.
        var between = cords.Where(c => c.From.Site == "cape").ToList();
        Assert.Equal(designed.Lines.Value.Lines.Single().Routes[1].Answer.Design.Scheme == LineScheme.InLine ? 2 : 1, between.Count);
    }

    [Fact]
    public void Documents_HaveEveryChannel()
    {
        var designed = Designed();
        Assert.Equal(16, PortsView.Of(designed).Rows().Count(r => r[12].Text == "line"));
        Assert.Equal(designed.Lines.Value.Cords.Length, CablesView.Of(designed).Rows().Count());
        Assert.Equal(2, LinksView.Of(designed).Rows().Count());
        using var stream = new MemoryStream();
        LinksJson.Write(designed, stream);
        using var json = JsonDocument.Parse(stream.ToArray());
        Assert.Equal(2, json.RootElement.GetProperty("classes").GetArrayLength());
        Assert.Equal(8, json.RootElement.GetProperty("links").GetArrayLength());
        var summary = PlanSummary.Of(designed);
        Assert.Equal((8, 8), (summary.Links, summary.Passing));
    }

    [Fact]
    public void UnfitCage_FailsTheLineAsAWhole()
    {
        var designed = Expect.Designed(PlanBlock.Compile(Sound.Replace("of: edge, ports: \"4, 8, 12, 16\"", "of: edge, ports: 1..4",
            StringComparison.Ordinal)));
        var line = designed.Lines.Value.Lines.Single();
        Assert.Equal(Verdict.Fail, line.Verdict);
        Assert.All(line.Routes, r => Assert.Equal(Verdict.Pass, r.Answer.Design.Verdict));
        Assert.Equal(8, PlanSummary.Of(designed).Failing);
    }

    private static DesignedPlan Designed() => Expect.Designed(PlanBlock.Compile(Sound));
}
