using CsCheck;
using Lanewright.Deliverables;
using Lanewright.Engineering.Placement;

namespace Lanewright.Tests.Placement;

/// <summary>Where things should stand, against brute force.</summary>
public sealed class PlacementTests
{
    // Source: brute force over every assignment of up to five things to up to seven places.
    [Fact]
    public void Assignment_IsTheCheapestOfAll()
    {
        Gen.Select(Gen.Int[1, 5], Gen.Int[0, 2], Gen.Double[0, 100].Array[35]).Sample(
            (things, more, numbers) =>
            {
                var places = things + more;
                var cost = new double[things, places];
                for (var t = 0; t < things; t++)
                    for (var p = 0; p < places; p++)
                        cost[t, p] = numbers[(t * places) + p];
                var found = Assignment.Solve(cost);
                Assert.Equal(things, found.Distinct().Count());
                var least = Choices(things, places).Min(c => c.Select((p, t) => cost[t, p]).Sum());
                Assert.Equal(least, found.Select((p, t) => cost[t, p]).Sum(), 6);
            },
            iter: 200);
    }

    // Brute force with plans: each spine is written into every rack that has room, the plan is designed anew, and its cables are priced; no
    // placement is cheaper than the one found, and the one found costs what the plan with it costs.
    [Fact]
    public void Spine_StandsWhereTheWholePlanIsCheapest()
    {
        var designed = Expect.Designed(PlanBlock.Compile(Plan("hall/S/6")));
        var answer = PlacementAnswer.Of(designed, [designed.Plan.Devices.Groups.Single(g => g.Name == "spine")], r => r.Row == "S");
        var placement = Assert.Single(answer.Groups);
        Assert.True(placement.IsExact);
        var costs = Enumerable.Range(1, 6).ToDictionary(r => r, r => Cost(Plan($"hall/S/{r}")));
        Assert.Equal(costs[6], placement.Now, 2);
        var best = costs.Values.Min();
        // The unit in the rack may differ from the one of the written plans, which changes no stocked length here.
        Assert.Equal(best, placement.Best, 2);
        Assert.Equal(best, costs[placement.Moves[0].To.Rack.Number], 2);
    }

    // Without hosts nobody can tell which switches are the highest: that is said, and not an empty answer.
    [Fact]
    public void LeavesAndSpinesWithoutHosts_AreToldToBeNamed()
    {
        var designed = Expect.Designed(PlanBlock.Compile("""
            lanewright: 1
            sites: { main: { halls: { hall: { rows: { A: { racks: 6 } } } } } }
            devices:
              leaf: { model: fixed-32x400, racks: hall/A/1..4, per-rack: 1, count: 4, unit: 40 }
              spine: { model: fixed-32x400, racks: hall/A/5..6, per-rack: 1, count: 2, unit: 40 }
            links: { up: { from: leaf, to: spine, pattern: each-to-each, rate: 400G, type: 400GBASE-DR4 } }
            """));
        var answer = PlacementAnswer.Of(designed, null, _ => true);
        Assert.Empty(answer.Groups);
        Assert.Equal(PlacementWords.NoHighest, answer.WhyNone);
        var named = PlacementAnswer.Of(designed, [designed.Plan.Devices.Groups.Single(g => g.Name == "spine")], _ => true);
        Assert.Equal("", named.WhyNone);
    }

    // Two that stand apart are never put together, whatever that saves.
    [Fact]
    public void DevicesOfTwoRacks_StayInTwoRacks()
    {
        var designed = Expect.Designed(PlanBlock.Compile(Plan("hall/S/5..6")));
        var placement = PlacementAnswer.Of(designed, [designed.Plan.Devices.Groups.Single(g => g.Name == "spine")], _ => true).Groups[0];
        Assert.Equal(2, placement.Moves.Select(m => m.To.Rack.Index).Distinct().Count());
        Assert.True(placement.Best < placement.Now);
    }

    // Brute force with plans: rows written in every order.
    [Fact]
    public void Rows_StandInTheCheapestOrder()
    {
        var names = new[] { "A", "B", "C" };
        var answer = PlacementAnswer.Of(Expect.Designed(PlanBlock.Compile(Rows(names))), null, _ => true);
        var order = Assert.Single(answer.Rows);
        var best = Orders(names).Min(o => Cost(Rows(o)));
        Assert.Equal(Cost(Rows(names)), order.Now, 2);
        Assert.Equal(best, order.Best, 2);
        Assert.Equal(best, Cost(Rows([.. order.Order])), 2);
        Assert.True(order.IsExact);
    }

    // The step from copper to active cable to optics: prices by length are those of plans with that length.
    [Fact]
    public void Steps_AreWhatPlansCostAtTheirLengths()
    {
        const string near = """
            lanewright: 1
            sites: { main: { halls: { hall: { rows: { A: { racks: 1 } } } } } }
            devices:
              leaf: { model: fixed-32x400, racks: hall/A/1, unit: 46 }
              spine: { model: fixed-32x400, racks: hall/A/1, unit: 44 }
            links:
              up: { from: leaf, to: spine, rate: 400G }
            """;
        var steps = PlacementAnswer.Of(Expect.Designed(PlanBlock.Compile(near)), null, _ => true).Steps[0].Steps;
        Assert.True(steps.Length > 1);
        for (var i = 1; i < steps.Length; i++) Assert.True(steps[i].From > steps[i - 1].To);
        // A stated length below the way itself would be another plan.
        foreach (var step in steps.Where(s => s.To.Metres >= 1))
        {
            var length = Lanewright.Quantities.Numerals.Plain(step.To.Metres);
            var stated = near.Replace("rate: 400G }", $"rate: 400G, length: {length} m }}", StringComparison.Ordinal);
            var designed = Expect.Designed(PlanBlock.Compile(stated));
            Assert.Equal(step.Last, designed.Design.SolutionOf(0)!.Price);
            Assert.Equal(step.Cable, designed.Design.SolutionOf(0)!.Cable.Name);
        }
    }

    private static string Plan(string spine) => $$"""
        lanewright: 1
        sites: { main: { halls: { hall: { rows: { A: { racks: 12 }, S: { racks: 6, x: 2 m, y: 4 m } } } } } }
        devices:
          leaf: { model: fixed-32x400, racks: hall/A/1..4, unit: 46 }
          spine: { model: fixed-32x400, racks: {{spine}}, unit: 48 }
        links:
          up: { from: leaf, to: spine, pattern: each-to-each, count: 2, rate: 400G }
        """;

    private static string Rows(string[] order) => $$"""
        lanewright: 1
        sites: { main: { halls: { hall: { rows: {
          {{order[0]}}: { racks: 4 }, {{order[1]}}: { racks: 4, y: 4 m }, {{order[2]}}: { racks: 4, y: 20 m } } } } } }
        devices:
          leaf: { model: fixed-32x400, racks: hall/A/1..4, unit: 46 }
          edge: { model: fixed-32x400, racks: hall/B/1..2, unit: 46 }
          spine: { model: fixed-32x400, racks: hall/C/1, unit: 48 }
        links:
          up: { from: leaf, to: spine, pattern: each-to-each, count: 4, rate: 400G }
          out: { from: edge, to: spine, pattern: each-to-each, rate: 400G }
        """;

    private static double Cost(string plan)
    {
        var designed = Expect.Designed(PlanBlock.Compile(plan));
        return (double)Enumerable.Range(0, designed.Plan.Links.Count)
            .Sum(l => Lanewright.Engineering.Choice.Solution.NewPrice(designed.Design.SolutionOf(l)!)) / 100;
    }

    private static IEnumerable<int[]> Choices(int things, int places) => things == 0
        ? [[]]
        : Choices(things - 1, places).SelectMany(c => Enumerable.Range(0, places).Where(p => !c.Contains(p)).Select(p => (int[])[.. c, p]));

    private static IEnumerable<string[]> Orders(string[] names) => names.Length == 0
        ? [[]]
        : names.SelectMany(n => Orders([.. names.Where(m => m != n)]).Select(o => (string[])[n, .. o]));
}
