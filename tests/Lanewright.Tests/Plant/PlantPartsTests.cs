using Lanewright.Deliverables;
using Lanewright.Engineering.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Tests.Plant;

/// <summary>What is ordered for trunks, by type: a cord, a trunk or a cassette of another type leaves the link dark. What each method is
/// made of: TIA-568.3 and a note on edition E (seen).</summary>
public sealed class PlantPartsTests
{
    private const string Plan = """
        lanewright: 1
        name: types
        policy: { connection-loss: 0.35 dB }
        sites: { main: { halls: { m: { rows: { A: { racks: 8 }, B: { racks: 8, y: 3 m }, C: { racks: 10, y: 6 m } } } } } }
        devices:
          l1: { model: fixed-48x25-8x100, racks: m/A/1..2, unit: 44 }
          l4: { model: fixed-32x400, racks: m/A/3, unit: 44 }
          s1: { model: fixed-48x25-8x100, racks: m/C/1..2, unit: 44 }
          s4: { model: fixed-32x400, racks: m/C/3, unit: 44 }
          oa: { model: panel-1u-12, racks: m/B/1..7, unit: 40, name: "oa{n}" }
          ob: { model: panel-1u-12, racks: m/C/9..10, per-rack: 4, unit: 36, name: "ob{n}" }
        trunks:
          mA: { from: oa1, to: ob1, cable: trunk-om4-12, length: 20 m, count: 2, cassette: cassette-lc-mm, method: A }
          mB: { from: oa2, to: ob2, cable: trunk-om4-12, length: 20 m, count: 2, cassette: cassette-lc-mm, method: B }
          mC: { from: oa3, to: ob3, cable: trunk-om4-12, length: 20 m, count: 2, cassette: cassette-lc-mm, method: C }
          mU1: { from: oa4, to: ob4, cable: trunk-om4-12, length: 20 m, count: 2, cassette: cassette-lc-mm, method: U1 }
          mU2: { from: oa5, to: ob5, cable: trunk-om4-12, length: 20 m, count: 2, cassette: cassette-lc-mm, method: U2 }
          dr: { from: oa6, to: ob6, cable: trunk-os2-8, count: 8 }
          drA: { from: oa7, to: ob7, cable: trunk-os2-12, count: 4, type: A, growth: 200 % }
        links:
          a: { from: l1-1, to: s1-1, rate: 25G, type: 25GBASE-SR, count: 6, through: mA }
          b: { from: l1-1, to: s1-1, rate: 25G, type: 25GBASE-SR, count: 6, through: mB }
          c: { from: l1-1, to: s1-1, rate: 25G, type: 25GBASE-SR, count: 6, through: mC }
          u1: { from: l1-2, to: s1-2, rate: 25G, type: 25GBASE-SR, count: 8, through: mU1 }
          u2: { from: l1-2, to: s1-2, rate: 25G, type: 25GBASE-SR, count: 8, through: mU2 }
          f: { from: l4, to: s4, rate: 400G, type: 400GBASE-DR4, count: 8, through: dr }
          fA: { from: l4, to: s4, rate: 400G, type: 400GBASE-DR4, count: 4, through: drA }
        """;

    private const double Exact = 1e-9;
    private static readonly JudgedPlan Judged = PlanBlock.Compile(Plan);
    private static readonly DesignedPlan Designed = Expect.Designed(Judged);

    // Methods A and C join straight transitions key up to key down, B a straight and a renumbered one key up to key up, U1 and U2 two of
    // their own; cables are A, B, C, B and B. Counts by hand: two trunks a group, two ends each.
    [Theory]
    [InlineData("trunk-om4-12", "A", 2)]
    [InlineData("trunk-om4-12", "B", 6)]
    [InlineData("trunk-om4-12", "C", 2)]
    [InlineData("cassette-lc-mm", "straight, adapter A", 8)]
    [InlineData("cassette-lc-mm", "straight, adapter B", 2)]
    [InlineData("cassette-lc-mm", "renumbered, adapter B", 2)]
    [InlineData("cassette-lc-mm", "U1, adapter A", 4)]
    [InlineData("cassette-lc-mm", "U2, adapter B", 4)]
    [InlineData("trunk-os2-8", "B", 8)]
    [InlineData("trunk-os2-12", "A", 4)]
    [InlineData("adapter-mpo12-a", "", 24)]
    public void Parts_StandByType(string item, string type, int expected) =>
        Assert.Equal(expected, Designed.Parts.Where(p => p.Item.Name == item && p.Type == type).Sum(p => p.Needed));

    /// <summary>Method A takes one cord of each pair straight; parallel optics over a type A trunk one of type A.</summary>
    [Fact]
    public void Cords_AreThoseOfTheTableOfPatches()
    {
        var view = PatchesView.Of(Designed);
        var names = view.Columns.Select(c => c.Name).ToList();
        var patched = view.Rows().CountBy(r => (r[names.IndexOf("part")].Text, r[names.IndexOf("type")].Text)).ToDictionary();
        var listed = Designed.Parts.Where(p => p.Item.Name.StartsWith("cord-", StringComparison.Ordinal))
            .GroupBy(p => (p.Item.Name, p.Type)).ToDictionary(g => g.Key, g => (int)g.Sum(p => p.Needed));
        Assert.Equal(patched.OrderBy(p => p.Key).Select(p => (p.Key.Item1, p.Key.Item2, p.Value)),
            listed.OrderBy(p => p.Key).Select(p => (p.Key.Name, p.Key.Type, p.Value)));
        Assert.Equal(6, listed[("cord-om4-lc", "A-to-A")]);
        Assert.Equal(4, listed[("cord-os2-mpo12", "A")]);
    }

    /// <summary>Stock says no type: it is taken once, whichever types it serves.</summary>
    [Fact]
    public void Stock_IsTakenOnce()
    {
        var stocked = Expect.Designed(PlanBlock.Compile(Plan + "\nstock:\n  - { model: trunk-om4-12, length: 20 m, quantity: 5 }\n"));
        Assert.Equal(5, stocked.Parts.Where(p => p.Item.Name == "trunk-om4-12").Sum(p => p.FromStock));
        Assert.Equal(5, stocked.Parts.Where(p => p.Item.Name == "trunk-om4-12").Sum(p => p.ToBuy));
    }

    // By hand: mU1 has 12 ports of which 8 are patched, so 8 fibres can be patched yet and none is lost; each array of drA leaves 4 of its
    // 12 fibres dark for good.
    [Theory]
    [InlineData("mU1", 16, 8, 0)]
    [InlineData("mA", 12, 12, 0)]
    [InlineData("dr", 64, 0, 0)]
    [InlineData("drA", 32, 0, 16)]
    public void Fibres_AreLitSpareOrLost(string trunk, int lit, int spare, int lost)
    {
        var state = Designed.Plant.Value.Trunks.Single(t => t.Trunk.Name == trunk);
        Assert.Equal((lit, spare, lost), (state.FibresLit, state.Spare, state.Lost));
        Assert.Equal(state.Fibres, lit + spare + lost);
    }

    /// <summary>By hand: four pairs of 0.35 dB and 20 m of OM4 at 3.5 dB/km are 1.47 dB; what 25GBASE-SR allows, 1.9 dB, less the glass of
    /// the cords is left for the trunk.</summary>
    [Fact]
    public void Budget_LeavesTheCordsOut()
    {
        var state = Designed.Plant.Value.Trunks.Single(t => t.Trunk.Name == "mA");
        var budget = TrunkBudget.Of(Designed.Plan, Designed.Design, Designed.Plant.Value, state)!;
        var cords = Designed.Design.SolutionOf(state.Ways[0].FirstLink)!.Patching.Sum(p => p.Length.Kilometres) * 3.5;
        Assert.Equal(1.9, budget.Allowed, Exact);
        Assert.Equal(1.47, budget.Trunk, Exact);
        Assert.Equal(1.9 - cords, budget.TrunkMost, Exact);
    }

    /// <summary>What to test against is what the cords of the links spoken of leave.</summary>
    [Fact]
    public void Finding_NamesTheLowerFigure()
    {
        var first = Designed.Design.Choices.First(c => c.Class.Statement.Name == "a").Class.FirstLink;
        var cords = Designed.Design.SolutionOf(first)!.Patching.Sum(p => p.Length.Kilometres) * 3.5;
        var finding = Judged.Findings.First(f => f.Kind.Code == "LW4208" && f.Subject == "a");
        Assert.Contains(Numerals.Shown(1.9 - cords, "dB"), finding.Message, StringComparison.Ordinal);
    }

    /// <summary>Growth beyond the whole is usual; too few trunks for it is told, as a warning where the plan asks for it.</summary>
    [Fact]
    public void Growth_ThatTheTrunksLackIsTold()
    {
        var short200 = Judged.Findings.Single(f => f.Kind.Code == "LW4215" && f.Subject == "drA");
        Assert.Equal(Findings.Severity.Warning, short200.Severity);
        Assert.Contains("4 of the 12 ports", short200.Message, StringComparison.Ordinal);
        Assert.Equal(Findings.Severity.Advice, Judged.Findings.Single(f => f.Kind.Code == "LW4215" && f.Subject == "dr").Severity);
    }

    /// <summary>dr and its growth want 12 places and drA 12: each has a panel of its own. With both in one, that panel is named and the
    /// others keep their answers.</summary>
    [Fact]
    public void PanelTooSmall_LeavesOtherGroupsTheirAnswer()
    {
        var crowded = Expect.Designed(PlanBlock.Compile(Plan.Replace("drA: { from: oa7,", "drA: { from: oa6,", StringComparison.Ordinal)));
        var sizing = TrunkSizing.Of(crowded.Plan, crowded.Plant.Value, null);
        var panel = Assert.Single(sizing.Short);
        Assert.Equal(("oa6", 12, 24), (panel.Name, panel.Places, panel.Ends));
        Assert.Equal(["dr", "drA"], panel.Groups);
        Assert.All(sizing.Groups, g => Assert.Equal(g.Trunk.Name.StartsWith("dr", StringComparison.Ordinal), g.Cheapest is null));
        Assert.All(sizing.Groups, g => Assert.NotNull(g.Planned));
    }

    [Theory]
    [InlineData("C000001a", 0, false)]
    [InlineData("mA-1", 0, false)]
    [InlineData("M.B01-40:01 / M.C09-36:01", 0, false)]
    [InlineData("M.A01-44:01 / M.C01-44:01", 0, false)]
    [InlineData("C000001", 0, true)]
    public void Trace_TakesWhatIsPrinted(string name, int link, bool isWhole) =>
        Assert.Equal(new NamedLink(link, isWhole), NamedLinks.Find(Designed, name));

    [Fact]
    public void Trace_ShowsAnIdleTrunk()
    {
        Assert.Null(NamedLinks.Find(Designed, "mA-2"));
        var idle = NamedLinks.FindIdle(Designed, "mA-2")!;
        Assert.Equal(["connection", "cassette", "trunk", "cassette", "connection"], idle.Elements.Select(e => e.Kind));
        Assert.Equal(idle, NamedLinks.FindIdle(Designed, "oa1:02")! with { Polarity = idle.Polarity, Elements = idle.Elements });
    }
}
