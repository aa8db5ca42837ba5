using Lanewright.Engineering.Placement;
using Lanewright.Rules;

namespace Lanewright.Tests.Pathways;

/// <summary>What is laid as one piece, where closed ducts are entered, and how routes between halls are told apart.</summary>
public sealed class CablePieceTests
{
    private const string Ring = """
        lanewright: 1
        policy: { contingency: 0 %, service: 0 m, in-rack: 0 m }
        sites: { main: { halls: { hall: { rows: { A: { racks: 2 }, B: { racks: 2, y: 4 m } }, pathways: {
          front: { from: { x: 0 m, y: 0 m }, to: { x: 5 m, y: 0 m }, width: 300 mm },
          back: { from: { x: 0 m, y: 4 m }, to: { x: 5 m, y: 4 m }, width: 300 mm },
          west: { from: { x: 0 m, y: 0 m }, to: { x: 0 m, y: 4 m }, WEST },
          east: { from: { x: 5 m, y: 0 m }, to: { x: 5 m, y: 4 m }, width: 300 mm } } } } } }
        devices:
          a: { model: fixed-32x400, racks: hall/A/1, unit: 40 }
          b: { model: fixed-32x400, racks: hall/B/1, unit: 30, count: 2, per-rack: 2, step: 4 }
        links:
          LINKS
        """;

    // Four legs of one array cable: what moves one moves all, and each needs its own length on the same way.
    [Fact]
    public void LegsOfAMovedFanOut_AreAsLongAsTheWayTheyGo()
    {
        var designed = Expect.Designed(Of("width: 10 mm, depth: 3 mm",
            "up: { from: { of: a, breakout: 4x100G }, to: { of: b, breakout: 4x100G }, pattern: striped, count: 16, rate: 100G }"));
        var book = designed.Pathways.Value;
        var moved = Enumerable.Range(0, designed.Plan.Links.Count).Where(l => book.MoveOf(l) is not null).ToList();
        Assert.NotEmpty(moved);
        Assert.All(moved, link =>
        {
            Assert.Equal(["hall/front", "hall/east", "hall/back"], book.Through(link));
            // By hand: 4.7 m along the front, 4 m, 4.7 m along the back, and what goes up and down.
            Assert.Equal(4.7 + 4 + 4.7, book.PartsOf(link)!.Value.Across.Metres, 6);
        });
    }

    // Pairs get ways of their own, found anew for each; those alike are pulled together all the same.
    [Fact]
    public void CablesOfTheSameWay_AreOneRouteOfThePullPlan()
    {
        var designed = Expect.Designed(Of("width: 300 mm", """
            l1: { from: a, to: b-1, count: 3, rate: 400G, type: 400GBASE-DR4, apart-from: l2 }
              l2: { from: a, to: b-1, count: 3, rate: 400G, type: 400GBASE-DR4 }
            """));
        var bundles = designed.Pulls.Value.Bundles;
        Assert.Equal(2, bundles.Length);
        Assert.Equal([3, 3], bundles.Select(b => b.Cables.Length));
        Assert.Equal(2, bundles.Select(b => b.Group).Distinct().Count());
    }

    // One link against three: what the larger set has over is kept apart as well.
    [Fact]
    public void LinksLeftOver_KeepApartFromTheLastOfTheOther()
    {
        var book = Expect.Designed(Of("width: 300 mm", """
            l1: { from: a, to: b-1, rate: 400G, type: 400GBASE-DR4, apart-from: l2 }
              l2: { from: a, to: b-1, count: 3, rate: 400G, type: 400GBASE-DR4 }
            """)).Pathways.Value;
        Assert.All([1, 2, 3], other => Assert.NotEqual(Across(0), Across(other)));
        Assert.Equal(3, book.Detours.Pairs.Length);

        string Across(int link) => Assert.Single(book.Through(link), name => name is "hall/west" or "hall/east");
    }

    // What lies there already stays on its way, and the other goes round it.
    [Fact]
    public void ExistingCables_StayWhereTheyLie()
    {
        var book = Expect.Designed(Of("width: 300 mm", """
            l1: { from: a, to: b-1, rate: 400G, type: 400GBASE-DR4, apart-from: l2 }
              l2: { from: a, to: b-1, rate: 400G, type: 400GBASE-DR4, existing: yes }
            """)).Pathways.Value;
        Assert.Contains("hall/west", book.Through(1));
        Assert.Contains("hall/east", book.Through(0));
    }

    // A route between halls that states no width is no stretch, and takes both all the same.
    [Theory]
    [InlineData("apart-from: m", "")]
    [InlineData("apart-from: m, side: A", ", side: B")]
    public void ARouteThatBothTake_IsTold(string own, string other)
    {
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            sites: { main: { halls: {
              n: { rows: { A: { racks: 2 } }, pathways: { t: { from: { x: 0 m, y: 0 m }, to: { x: 3 m, y: 0 m }, width: 200 mm } } },
              s: { rows: { A: { racks: 2 } } } } } }
            routes: { from: n, to: s, length: 40 m }
            devices: { a: { model: fixed-32x400, racks: n/A/1 }, b: { model: fixed-32x400, racks: s/A/1 } }
            links:
              l: { from: a, to: b, rate: 400G, type: 400GBASE-DR4, {{own}} }
              m: { from: a, to: b, rate: 400G, type: 400GBASE-DR4{{other}} }
            """);
        Assert.Contains(judged.Findings, f => f.Kind.Code == "LW4106");
    }

    // A closed duct has no lid: cables go in and out at its ends (common practice).
    [Fact]
    public void Ducts_AreEnteredAtTheirEnds()
    {
        var designed = Expect.Designed(Of("kind: duct, width: 100 mm",
            "l1: { from: a, to: b-1, rate: 400G, type: 400GBASE-DR4 }"));
        Assert.Single(designed.Pathways.Value.Fills, f => f.Pathway.Name == "west");
        var unreached = Expect.Designed(PlanBlock.Compile("""
            lanewright: 1
            policy: { contingency: 0 %, service: 0 m, in-rack: 0 m }
            sites: { main: { halls: { hall: { rows: { A: { racks: 10 } }, pathways: {
              run: { from: { x: -1 m, y: 0.5 m }, to: { x: 7 m, y: 0.5 m }, width: 100 mm, kind: duct } } } } } }
            devices: { a: { model: fixed-32x400, racks: hall/A/3 }, b: { model: fixed-32x400, racks: hall/A/5 } }
            links: { l: { from: a, to: b, rate: 400G, type: 400GBASE-DR4 } }
            """));
        // Both racks are nearer to its beginning, so their cable meets there and does not lie in it.
        Assert.Equal(0, unreached.Pathways.Value.Fills.Single().Cables);
    }

    [Theory]
    [InlineData("kind: duct")]
    [InlineData("load-rating: 20 kg/m")]
    [InlineData("bend-radius: 100 mm")]
    [InlineData("pull-points: 2")]
    [InlineData("depth: 100 mm")]
    [InlineData("width: 100 mm, kind: duct, depth: 50 mm")]
    public void KeysOfARoute_ThatCountForNothing_AreTold(string keys) =>
        Assert.Contains(TwoHalls($"- {{ from: n, to: s, length: 40 m, {keys} }}").Findings, f => f.Kind.Code == "LW1711");

    [Fact]
    public void RoutesWithoutNames_AreNumbered_AndNamesAreNotGivenTwice()
    {
        const string two = "- { from: n, to: s, length: 40 m, width: 50 mm }\n  - { from: n, to: s, length: 60 m, width: 50 mm }";
        var plan = Expect.Designed(TwoHalls(two)).Plan;
        Assert.Equal(["n to s", "n to s (2)"], plan.Building.Routes.Select(r => r.Name));
        const string named = "- { name: r, from: n, to: s, length: 40 m }\n  - { name: r, from: n, to: s, length: 60 m }";
        Assert.Contains(TwoHalls(named).Findings, f => f.Kind.Name == "NameTaken");
    }

    // A table of orders grows with the fourth power of the rows: very many are said not to have been looked at.
    [Fact]
    public void VeryManyRows_AreLeftAsTheyStand()
    {
        var rows = string.Join(", ", Enumerable.Range(1, 300)
            .Select(i => FormattableString.Invariant($"R{i}: {{ racks: 1, y: {2 * i} m }}")));
        var designed = Expect.Designed(PlanBlock.Compile($$"""
            lanewright: 1
            sites: { main: { halls: { hall: { rows: { {{rows}} } } } } }
            devices: { a: { model: fixed-32x400, racks: hall/R1/1 }, b: { model: fixed-32x400, racks: hall/R9/1 } }
            links: { l: { from: a, to: b, rate: 400G, type: 400GBASE-DR4 } }
            """));
        var order = Assert.Single(new PlacementStudy(designed.Plan, designed.Design, designed.Racks.Value).Rows());
        Assert.False(order.IsLookedAt);
        Assert.False(order.IsExact);
    }

    private static JudgedPlan Of(string west, string links) => PlanBlock.Compile(Ring
        .Replace("WEST", west, StringComparison.Ordinal).Replace("LINKS", links, StringComparison.Ordinal));

    private static JudgedPlan TwoHalls(string routes) => PlanBlock.Compile($$"""
        lanewright: 1
        sites: { main: { halls: { n: { rows: { A: { racks: 2 } } }, s: { rows: { A: { racks: 2 } } } } } }
        routes:
          {{routes}}
        devices: { a: { model: fixed-32x400, racks: n/A/1 }, b: { model: fixed-32x400, racks: s/A/1 } }
        links: { l: { from: a, to: b, rate: 400G, type: 400GBASE-DR4 } }
        """);
}
