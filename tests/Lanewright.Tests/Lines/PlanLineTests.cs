using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Model.Binding;
using Lanewright.Model.Catalogues;
using Lanewright.Rules;

namespace Lanewright.Tests.Lines;

/// <summary>Lines of plans: what is read, what is found, what is bought and what cuts leave.</summary>
public sealed class PlanLineTests
{
    private const string Sound = """
        lanewright: 1
        sites: { bay: { }, cape: { }, town: { } }
        spans:
          coast: { from: bay, to: town, length: 78 km, measured-loss: 17 dB, ducts: [quay] }
          inland: { from: bay, to: cape, length: 50 km, measured-loss: 11 dB, ducts: [rail] }
          hills: { from: cape, to: town, length: 45 km, measured-loss: 10 dB }
        lines: { away: { from: bay, to: town, type: 400ZR, channels: 8, spacing: 100 GHz, routes: 2 } }
        """;

    [Fact]
    public void SoundPlan_IsClean() => Expect.Clean(Sound);

    [Theory]
    [InlineData("from: bay, to: town, length", "from: bey, to: town, length", "LW1101")]
    [InlineData("length: 78 km", "length: 78", "LW0107")]
    [InlineData("length: 78 km", "lenght: 78 km", "LW0104")]
    [InlineData("length: 78 km", "length: 0 km", "LW1701")]
    [InlineData("measured-loss: 17 dB", "measured-loss: 0 dB", "LW1701")]
    [InlineData("measured-loss: 17 dB", "measured-loss: 1 dB", "LW1701")]
    [InlineData("measured-loss: 17 dB", "loss: 0.02 dB/km", "LW1701")]
    [InlineData("to: cape, length", "to: bay, length", "LW1701")]
    public void FaultOfASpan_IsReportedWhereItStands(string right, string wrong, string code) => Raises(right, wrong, code);

    [Theory]
    [InlineData("type: 400ZR", "type: 400ZS", "LW1101")]
    [InlineData("type: 400ZR", "type: 400ZR, rate: 100G", "LW1701")]
    [InlineData("type: 400ZR, ", "", "LW0105")]
    [InlineData("channels: 8", "channels: 49", "LW1701")]
    [InlineData("channels: 8", "channels: 0", "LW0107")]
    [InlineData("spacing: 100 GHz", "spacing: 1 GHz", "LW1701")]
    [InlineData("spacing: 100 GHz", "first: 300 THz", "LW1701")]
    [InlineData("spacing: 100 GHz", "first: 193.101 THz", "LW1701")]
    [InlineData("spacing: 100 GHz", "booster: loud", "LW1701")]
    [InlineData("routes: 2", "over: [inland]", "LW1701")]
    [InlineData("routes: 2", "over: [hills, inland]", "LW1701")]
    [InlineData("routes: 2", "other-way: coast", "LW1701")]
    [InlineData("routes: 2", "over: cost", "LW1101")]
    [InlineData("away: { from: bay, to: town", "away: { from: bay, to: bay", "LW1701")]
    public void FaultOfALine_IsOneFinding(string right, string wrong, string code)
    {
        Assert.Contains(right, Sound, StringComparison.Ordinal);
        Expect.Codes(Sound.Replace(right, wrong, StringComparison.Ordinal), code);
    }

    [Fact]
    public void Schemes_AreNamedAsTheEngineNamesThem() =>
        Assert.Equal(LineLanguage.Schemes, Enum.GetValues<LineScheme>().Select(LineWords.Name));

    [Fact]
    public void Cuts_LeaveTheOtherRoute()
    {
        var line = Book(Sound).Lines.Single();
        Assert.Equal(2, line.Routes.Length);
        Assert.Equal(6400, line.Capacity.Gigabits);
        Assert.Equal(["coast", "hills", "inland", "quay", "rail"], line.Cuts.Select(c => c.What).Order());
        Assert.All(line.Cuts, c => Assert.Equal(3200, c.Left.Gigabits));
        // 78 km and 95 km at 2.73 cuts on 1000 km and 12 h (figures of the 1990s, memory): both down at once.
        var down = 78 * 2.73 / 1000 * 12 / 8760 * (95 * 2.73 / 1000 * 12 / 8760);
        Assert.Equal(1 - down, line.Availability.Value, 1e-12);
        Assert.Equal(17 * 4.8967, line.Difference!.Value.Nanoseconds / 1000, 0.01);
    }

    // Source: two routes of 99.9 % behind a shared entry of 99.99 % work 99.98990 % of the time (derived, an independent reference
    // calculation); here the entries are the two end sites, at the root of that each.
    [Fact]
    public void SharedSites_StandBeforeBothRoutes()
    {
        const string plan = """
            lanewright: 1
            sites: { bay: { availability: 99.995 % }, cape: { availability: 99.95 % }, town: { availability: 99.995 % } }
            policy: { fibre-cuts: 2, fibre-repair: 43.8 h }
            spans:
              coast: { from: bay, to: town, length: 100 km, measured-loss: 17 dB, ducts: [quay] }
              inland: { from: bay, to: cape, length: 50 km, measured-loss: 11 dB, ducts: [rail] }
              hills: { from: cape, to: town, length: 0.1 km, measured-loss: 1 dB }
            lines:
              away: { from: bay, to: town, type: 400ZR, over: coast, other-way: [inland, hills], scheme: coherent-booster-preamplifier }
            """;
        var line = Book(plan).Lines.Single();
        // 100 km at 2 cuts on 1000 km and 43.8 h: 0.1 % of the time; 50.1 km half of that, and a site of 99.95 % between.
        var (one, two) = (0.999, (1 - (0.0501 * 2 * 43.8 / 8760)) * 0.9995);
        Assert.Equal(0.99995 * 0.99995 * (1 - ((1 - one) * (1 - two))), line.Availability.Value, 1e-12);
        // In one duct as much fails together as the shorter span is long.
        var ducts = Book(plan.Replace("ducts: [rail]", "ducts: [quay]", StringComparison.Ordinal)).Lines.Single();
        Assert.True(ducts.Availability < line.Availability);
        Assert.True(ducts.Availability.Value < 0.99995 * 0.99995 * (1 - (0.05 * 2 * 43.8 / 8760)) + 1e-12);
    }

    // More of two routes in one duct never leaves a line more of the time: of two spans against one in a duct, and of two against two.
    [Fact]
    public void MoreInOneDuct_IsNoBetter()
    {
        const string plan = """
            lanewright: 1
            sites: { bay: { }, cape: { }, moor: { }, town: { } }
            policy: { fibre-cuts: 1000, fibre-repair: 12 h }
            spans:
              a1: { from: bay, to: cape, length: 50 km, ducts: [d] }
              a2: { from: cape, to: town, length: 50 km, ducts: [DUCT] }
              b1: { from: bay, to: moor, length: 50 km, ducts: [d] }
              b2: { from: moor, to: town, length: 50 km }
            lines:
              away: { from: bay, to: town, type: 400ZR, over: [a1, a2], other-way: [b1, b2], scheme: coherent-in-line }
            """;
        var less = Book(plan.Replace("DUCT", "own", StringComparison.Ordinal)).Lines.Single().Availability;
        var more = Book(plan.Replace("DUCT", "d", StringComparison.Ordinal)).Lines.Single().Availability;
        Assert.True(more <= less, $"{more} with more in common, {less} with less");
    }

    [Fact]
    public void Costs_DecideWhereEverySpanHasOne()
    {
        var all = Sound.Replace("length: 78 km,", "length: 78 km, cost: 900,", StringComparison.Ordinal)
            .Replace("length: 50 km,", "length: 50 km, cost: 100,", StringComparison.Ordinal)
            .Replace("routes: 2", "routes: 1", StringComparison.Ordinal);
        Assert.Equal("coast", Book(all).Lines.Single().Routes.Single().Name);
        var priced = all.Replace("length: 45 km,", "length: 45 km, cost: 100,", StringComparison.Ordinal);
        Assert.Equal("inland, hills", Book(priced).Lines.Single().Routes.Single().Name);
    }

    [Fact]
    public void SpansThatCostTheSame_AreUsedInTurn()
    {
        const string plan = """
            lanewright: 1
            sites: { bay: { }, town: { } }
            spans:
              east: { from: bay, to: town, length: 60 km, measured-loss: 13 dB, pairs: 2 }
              west: { from: bay, to: town, length: 60 km, measured-loss: 13 dB, pairs: 2 }
            lines:
              a: { from: bay, to: town, type: 400ZR, channels: 8 }
              b: { from: town, to: bay, type: 400ZR, channels: 8 }
              c: { from: bay, to: town, type: 400ZR, channels: 8 }
              d: { from: bay, to: town, type: 400ZR, channels: 8 }
            """;
        var routes = Book(plan).Lines.Select(l => l.Routes.Single().Name).ToList();
        Assert.Equal(2, routes.Count(r => r == "east"));
        Assert.Equal(2, routes.Count(r => r == "west"));
        Assert.DoesNotContain(PlanBlock.Compile(plan).Findings, f => f.Kind.Name == "SpanPairsExhausted");
    }

    // A ladder of places has more ways than can be looked at; the one span behind it proves that there is no pair all the same.
    [Fact]
    public void ASpanThatEveryWayNeeds_ProvesThatThereIsNoPairAtOnce()
    {
        var sites = string.Join(", ", Enumerable.Range(0, 32).Select(i => $"s{i}: {{ }}"));
        var spans = string.Join("\n", Enumerable.Range(0, 30).SelectMany(i => new[] { i + 1, i + 2 }.Where(k => k < 31)
            .Select(k => $"  s{i}-{k}: {{ from: s{i}, to: s{k}, length: {(k - i) * 2} km }}")));
        var line = Book($$"""
            lanewright: 1
            sites: { {{sites}} }
            spans:
            {{spans}}
              last: { from: s30, to: s31, length: 2 km }
            lines: { away: { from: s0, to: s31, type: 400ZR, channels: 8, routes: 2 } }
            """).Lines.Single();
        Assert.Equal(["span 'last'"], line.Separating);
        Assert.True(line.IsProven);
        Assert.Single(line.Routes);
    }

    // The type is invented here: the shipped tables hold no coarse one.
    [Fact]
    public void CoarseType_OfATableOfOnesOwnIsTriedBeforeDenseOnes()
    {
        var judged = PlanBlock.Compile("""
            lanewright: 1
            standards: own-wavelength-types.csv
            sites: { bay: { }, town: { } }
            spans: { near: { from: bay, to: town, length: 20 km, measured-loss: 5 dB } }
            lines: { away: { from: bay, to: town, rate: 10G, channels: 8 } }
            # file: own-wavelength-types.csv
            subject,field,value,unit,document,clause,edition,mark,read-in,note
            own,detection,direct,,own sheet,,,invented,,
            own,grid,CWDM,,own sheet,,,invented,,
            own,rate,10,Gb/s,own sheet,,,invented,,
            own,tx-min,0,dBm,own sheet,,,invented,,
            own,tx-max,5,dBm,own sheet,,,invented,,
            own,rx-min,-20,dBm,own sheet,,,invented,,
            own,rx-max,-1,dBm,own sheet,,,invented,,
            own,dispersion-max,800,ps/nm,own sheet,,,invented,,
            own,frequency-min,185,THz,own sheet,,,invented,,
            own,frequency-max,205,THz,own sheet,,,invented,,
            own,pmd-max,10,ps,own sheet,,,invented,,
            """);
        var design = Book(judged).Lines.Single().Routes.Single().Answer.Design;
        Assert.Equal(LineScheme.CoarseDirect, design.Scheme);
        Assert.Equal("own", design.TypeName);
        // G.694.2: eight channels 20 nm apart about 1550 nm are those from 1471 or 1491 nm up.
        Assert.Equal(140, design.Channels[0].Frequency.Wavelength.Nanometres - design.Channels[^1].Frequency.Wavelength.Nanometres, 0.01);
    }

    [Fact]
    public void SharedDuct_IsTheProofThatThereIsNoPair()
    {
        var line = Book(Sound.Replace("ducts: [rail]", "ducts: [quay]", StringComparison.Ordinal)).Lines.Single();
        Assert.Single(line.Routes);
        Assert.Equal("duct 'quay'", Assert.Single(line.Separating));
    }

    [Fact]
    public void Parts_AreThoseOfBothEndsAndBothDirections()
    {
        var parts = Expect.Designed(PlanBlock.Compile(Sound)).Parts;
        Assert.Equal(32, parts.Single(p => p.Item.Name == "line-400zr").Needed);
        Assert.Equal(4, parts.Single(p => p.Item.Name == "line-mux-48").Needed);
        Assert.Equal(8, parts.Single(p => p.Item.Name == "line-edfa").Needed);
        var grey = PlanBlock.Compile("""
            lanewright: 1
            sites: { bay: { }, town: { } }
            spans: { near: { from: bay, to: town, length: 2 km, measured-loss: 0.8 dB, pairs: 4 } }
            lines: { away: { from: bay, to: town, rate: 400G, channels: 2 } }
            """);
        var module = Assert.Single(Expect.Designed(grey).Parts);
        Assert.IsType<ModuleModel>(module.Item);
        Assert.Equal(4, module.Needed);
    }

    [Fact]
    public void Changes_GainAndTheBestBuyIsTheMostPerCost()
    {
        var route = Book(Sound).Lines.Single().Routes[0];
        var changes = LineChange.Of(route.Answer, CatalogueBinder.Shipped);
        Assert.All(changes, c => Assert.True(c.Gained.Value > 0));
        Assert.Equal(changes.Select(c => c.Gained).OrderDescending(), changes.Select(c => c.Gained));
        var best = LineChange.BestBuy(changes);
        Assert.NotNull(best);
        foreach (var other in changes.Where(c => c.Cost is { } cost && cost.Units > 0))
            Assert.True(best.Gained.Value / (double)best.Cost!.Value.Units >= other.Gained.Value / (double)other.Cost!.Value.Units);
    }

    [Fact]
    public void NamedScheme_IsJudgedEvenIfItFails()
    {
        var judged = PlanBlock.Compile(Sound.Replace("routes: 2", "scheme: coherent-booster", StringComparison.Ordinal));
        Assert.Equal(LineScheme.Booster, Book(judged).Lines.Single().Routes.Single().Answer.Design.Scheme);
        Assert.Equal(Verdict.Fail, Book(judged).Lines.Single().Verdict);
        Assert.Contains(judged.Findings, f => f.Kind.Code == "LW5105");
        Assert.DoesNotContain(judged.Findings, f => f.Kind.Code == "LW5121");
    }

    private static void Raises(string right, string wrong, string code)
    {
        Assert.Contains(right, Sound, StringComparison.Ordinal);
        var judged = PlanBlock.Compile(Sound.Replace(right, wrong, StringComparison.Ordinal));
        Assert.True(judged.Findings.Any(f => f.Kind.Code == code), Expect.Text(judged));
    }

    private static LineBook Book(string plan) => Book(PlanBlock.Compile(plan));

    private static LineBook Book(JudgedPlan judged) => Expect.Designed(judged).Lines.Value;
}
