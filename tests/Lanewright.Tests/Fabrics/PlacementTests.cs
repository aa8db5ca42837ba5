using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Tests.Fabrics;

/// <summary>Where switches of an answer stand, and what limits of racks do to it.</summary>
public sealed class PlacementTests
{
    private const string Full =
        "{ hosts: { host: { count: 240, rate: 100G, ports: 2, per-rack: 24, model: server-2u, cards: nic-2x100 } }, "
        + "oversubscription: '3:1', survive: 1, shapes: leaf-spine }";

    [Fact]
    public void RacksFullOfHosts_HaveTheirLeavesInRacksOfTheirOwn()
    {
        var (_, study) = Asked.Study(Asked.Question(Full));
        var layout = Assert.Single(study.Answer.Options).Layout;
        var hosts = RacksOf(layout, g => g.Role == SwitchRole.Host);
        var leaves = RacksOf(layout, g => g.Role == SwitchRole.Leaf);
        Assert.NotEmpty(leaves);
        Assert.Empty(hosts.Intersect(leaves));
        // No rack takes both links of a host.
        Assert.Empty(RacksOf(layout, g => g.Name == "leaf-a").Intersect(RacksOf(layout, g => g.Name == "leaf-b")));
        Assert.Empty(leaves.Intersect(RacksOf(layout, g => g.Role == SwitchRole.Spine)));
        Assert.All(layout.Groups, g => Assert.All(g.Places, p => Assert.InRange(p.Unit, 1, p.Rack.Type.Units - g.Model.Units + 1)));
        Assert.Equal(layout.Groups.Sum(g => g.Places.Length),
            layout.Groups.SelectMany(g => g.Places).Select(p => (p.Rack.Index, p.Unit)).Distinct().Count());
    }

    [Theory]
    [InlineData("main/S/1", 1)]
    [InlineData("main/S", 3)]
    public void NamedRacks_TakeLeavesAndSpinesAsFarAsTheyGo(string spineRacks, int racks)
    {
        var (_, study) = Asked.Study(Asked.Plan(Named(spineRacks, perRack: 24, count: 72)));
        var layout = study.Answer.Options.Single(o => o.Shape == FabricShape.LeafSpine).Layout;
        var switches = layout.Groups.Where(g => g.Role != SwitchRole.Host).SelectMany(g => g.Places.Select(p => (g, p))).ToList();
        Assert.InRange(switches.Select(s => s.p.Rack.Index).Distinct().Count(), 1, racks);
        foreach (var rack in switches.GroupBy(s => s.p.Rack))
        {
            var units = rack.SelectMany(s => Enumerable.Range(s.p.Unit, s.g.Model.Units)).ToList();
            Assert.Equal(units.Count, units.Distinct().Count());
            Assert.InRange(units.Max(), 1, rack.Key.Type.Units);
        }
    }

    [Fact]
    public void HostsTallerThanTheirRack_AreToldAsTheReason()
    {
        var (_, study) = Asked.Study(Asked.Question(Full.Replace("per-rack: 24", "per-rack: 25", StringComparison.Ordinal)));
        Assert.Empty(study.Answer.Options);
        Assert.Contains(study.Answer.Lost, l => l.Reason == "25 x server-2u take 50 units and a rack has 48");
    }

    [Fact]
    public void TooFewRacks_AreAWishThatGivesWay()
    {
        var (_, study) = Asked.Study(Asked.Plan(Named("main/S", perRack: 16, count: 100)));
        Assert.Empty(study.Answer.Options);
        Assert.Contains(study.Answer.Lost, l => l.Reason == "the hosts fill 7 racks and 3 are named for them");
        var possible = study.Relaxations.ToDictionary(r => r.Wish.Key, r => r.Possible);
        Assert.Equal("7 racks", possible["racks"]);
        // Twenty-four servers of two units fill a rack, and three such racks are too few for a hundred.
        Assert.Null(possible["per-rack"]);
        Assert.Equal("48", possible["hosts"]);
        Assert.Contains(study.Conflicts, c => c.Select(w => w.Key).SequenceEqual(["hosts", "racks"]));
    }

    [Fact]
    public void TooFewRacks_AreEnoughWithMoreHostsInEach()
    {
        var (_, study) = Asked.Study(Asked.Plan(Named("main/S", perRack: 12, count: 60)));
        var perRack = Assert.Single(study.Relaxations, r => r.Wish.Key == "per-rack").Possible;
        Assert.Equal("20", perRack);
        Assert.NotEmpty(Asked.Study(Asked.Plan(Named("main/S", perRack: 20, count: 60))).Study.Answer.Options);
        Assert.Empty(Asked.Study(Asked.Plan(Named("main/S", perRack: 19, count: 60))).Study.Answer.Options);
    }

    /// <summary>A limit takes designs away and adds none: no answer under it is cheaper.</summary>
    [Theory]
    [InlineData("rack-power", "2.5 kW")]
    [InlineData("rack-power", "3 kW")]
    [InlineData("rack-power", "3.5 kW")]
    [InlineData("rack-power", "5 kW")]
    [InlineData("rack-weight", "40 kg")]
    public void LimitOfARack_IsNeverCheaperThanNone(string key, string limit)
    {
        const string question = "{ hosts: { host: { count: 600, rate: 100G, ports: 2, per-rack: 24 } }, oversubscription: '3:1', "
            + "survive: 1, shapes: leaf-spine";
        var free = Price(question + " }");
        var bound = Price($"{question}, {key}: {limit} }}");
        Assert.True(bound >= free, $"{bound} with {key} {limit} is less than {free}");
    }

    [Theory]
    [InlineData("{ hosts: { host: { count: 40, rate: 100G, ports: 2 } }, shapes: pair }")]
    [InlineData("{ hosts: { host: { count: 300, rate: 100G, ports: 2, per-rack: 24 } }, shapes: pair }")]
    [InlineData("{ hosts: { a: { count: 20, rate: 25G, ports: 2 }, b: { count: 20, rate: 200G, ports: 2 } }, shapes: pair }")]
    public void Peers_AreNoSlowerThanThePortsOfHosts(string question)
    {
        var (_, study) = Asked.Study(Asked.Question(question));
        var option = Assert.Single(study.Answer.Options);
        var rates = option.Layout.Links.Where(l => l.Name == "peers").Select(l => l.Rate).ToList();
        Assert.True(Assert.Single(rates) >= study.Wanted.Hosts.Max(h => h.Rate));
    }

    private static Money Price(string question) =>
        Assert.Single(Asked.Study(Asked.Question(question)).Study.Answer.Options).PriceOverYears;

    private static HashSet<int> RacksOf(FabricLayout layout, Func<FabricGroup, bool> isMeant) =>
        [.. layout.Groups.Where(isMeant).SelectMany(g => g.Places).Select(p => p.Rack.Index)];

    private static string Named(string spineRacks, int perRack, int count) => $$"""
        lanewright: 1
        name: lab
        sites: { s: { halls: { main: { rows: { A: { racks: 3 }, S: { racks: 3, y: 3 m } } } } } }
        wanted:
          hosts: { node: { count: {{count}}, rate: 100G, ports: 2, per-rack: {{perRack}}, model: server-2u, cards: nic-2x100 } }
          oversubscription: 3:1
          tiers: 2
          racks: main/A
          spine-racks: {{spineRacks}}
        """;
}
