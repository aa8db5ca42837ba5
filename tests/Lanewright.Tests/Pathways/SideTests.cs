using CsCheck;
using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;
using Lanewright.Rules;

namespace Lanewright.Tests.Pathways;

/// <summary>Sides of pathways: trunks keep them, and two ways of two sides are looked for together.</summary>
public sealed class SideTests
{
    private const string Patched = """
        lanewright: 1
        policy: { contingency: 0 %, service: 0 m, in-rack: 0 m }
        sites: { main: { halls: { hall: { rows: { A: { racks: 6 }, B: { racks: 6, y: 4 m } }, pathways: {
          front: { from: { x: 0 m, y: 0 m }, to: { x: 4 m, y: 0 m }, width: 300 mm },
          back: { from: { x: 0 m, y: 4 m }, to: { x: 4 m, y: 4 m }, width: 300 mm },
          west: { from: { x: 0 m, y: 0 m }, to: { x: 0 m, y: 4 m }, width: 300 mm, side: A },
          east: { from: { x: 4 m, y: 0 m }, to: { x: 4 m, y: 4 m }, width: 300 mm, EAST } } } } } }
        devices:
          a: { model: fixed-32x400, racks: hall/A/1, unit: 2 }
          b: { model: fixed-32x400, racks: hall/B/1, unit: 40 }
          near: { model: panel-1u-12, racks: hall/A/1, unit: 46 }
          far: { model: panel-1u-12, racks: hall/B/1, unit: 46 }
        trunks: { backbone: { from: near, to: far, cable: trunk-os2-12, count: 2, TRUNK } }
        links:
          LINKS
        """;

    private const string One = "l: { from: a, to: b, count: 1, rate: 400G, type: 400GBASE-DR4, through: backbone, side: B }";

    [Theory]
    [InlineData("", One)]
    [InlineData("side: B", "l: { from: a, to: b, count: 1, rate: 400G, type: 400GBASE-DR4, through: backbone }")]
    public void Trunks_LieInTheSideThatIsStated(string trunk, string links)
    {
        var designed = Expect.Designed(Compile("side: B", trunk, links));
        Assert.Equal(["hall/front", "hall/east", "hall/back"], designed.Pathways.Value.Through(new CableKey(CableKind.Trunk, 0, 0)));
        // By hand: 3.7 m along the front from x = 0.3 m, 4 m, 3.7 m back.
        Assert.InRange(designed.Design.Trunks.Needed(designed.Plan.Trunks[0])!.Value.Metres, 3.7 + 4 + 3.7, (3.7 + 4 + 3.7) + 2);
    }

    // By hand: the panels stand in the racks of their switches, so that trunks are all that is laid; west and east have nothing in common,
    // and from the middle of the racks the front and the back are gone along in opposite directions.
    [Theory]
    [InlineData("side: B", false)]
    [InlineData("side: A", true)]
    public void SetsThroughPanels_AreHeldAgainstOneAnotherTrunksIncluded(string side, bool isShared)
    {
        var judged = PlanBlock.Compile(Patched.Replace("EAST", "side: B", StringComparison.Ordinal)
            .Replace("TRUNK }", "side: A }, other: { from: near, to: far, cable: trunk-os2-12, SIDE }", StringComparison.Ordinal)
            .Replace("SIDE", side, StringComparison.Ordinal)
            .Replace("LINKS", """
                l: { from: a, to: b, rate: 400G, type: 400GBASE-DR4, through: backbone, apart-from: m }
                  m: { from: a, to: b, rate: 400G, type: 400GBASE-DR4, through: other }
                """, StringComparison.Ordinal));
        var pair = Assert.Single(Expect.Designed(judged).Pathways.Value.Pairs);
        Assert.True(pair.IsPatched);
        Assert.Equal(isShared, pair.IsTogether);
        Assert.Equal(isShared, judged.Findings.Any(f => f.Kind.Code == "LW4106"));
        Assert.DoesNotContain(judged.Findings, f => f.Kind.Code is "LW4109" or "LW4107");
    }

    [Fact]
    public void Trunks_WhoseSideLeadsNowhere_AreTold() =>
        Assert.Contains(Compile("side: C", "", One).Findings, f => f.Kind.Code == "LW4108");

    [Fact]
    public void SetsOfTwoSidesThroughTheSameTrunks_AreTold()
    {
        const string other = "m: { from: a, to: b, count: 1, rate: 400G, type: 400GBASE-DR4, through: backbone, side: A }";
        var judged = Compile("side: B", "", One + "\n  " + other);
        Assert.Contains(judged.Findings, f => f.Kind.Code == "LW1702");
        Assert.Contains(Compile("side: B", "side: A", One).Findings, f => f.Kind.Code == "LW1702");
    }

    // Two ways of two sides, held against all pairs of simple ways there are (brute force): apart where any are, and never called proven
    // where some are.
    [Fact]
    public void TwoWaysOfTwoSides_AreApartWhereAnyAre()
    {
        var (apart, proven) = (0, 0);
        Gen.Select(Gen.Int[0, 3].Array[12], Gen.Int[1, 9].Array[4]).Sample(
            (kinds, steps) =>
            {
                var trays = TrayGrid.Grid(3, 3, [true], [.. steps.Select(s => (double)s)]).ToList();
                var sided = trays.Zip(kinds, (tray, kind) => (tray, kind)).Where(t => t.kind < 3)
                    .Select((t, i) => t.tray with { Side = t.kind switch { 1 => "A", 2 => "B", _ => "" } }).ToList();
                var at = steps.Take(2).Sum();
                var text = PlanOf(sided, at);
                var designed = Expect.Designed(PlanBlock.Compile(text));
                if (designed.Design.Lengths.Ways is not { } ways || designed.Pathways.Value.Detours.Pairs is not [var pair]) return;
                // A side that no tray has keeps nothing away, which another rule tells.
                if (ways.Net.SideOf("A") < 0 || ways.Net.SideOf("B") < 0) return;
                var exists = AreApart(ways.Net);
                Assert.Equal(exists, !pair.IsTogether);
                if (pair.IsTogether) proven += pair.IsProven ? 1 : 0;
                else apart++;
            },
            iter: 500, threads: 1);
        Assert.True(apart > 0 && proven > 0, $"{apart} apart, {proven} proven");
    }

    private static string PlanOf(IEnumerable<Pathway> trays, double at)
    {
        var texts = trays.Select(t => FormattableString.Invariant(
                $"{t.Name}: {{ from: {{ x: {t.FromX.Metres} m, y: {t.FromY.Metres} m }}, ")
            + FormattableString.Invariant($"to: {{ x: {t.ToX.Metres} m, y: {t.ToY.Metres} m }}, width: 300 mm")
            + (t.Side.Length > 0 ? $", side: {t.Side} }}" : " }"));
        return $$"""
            lanewright: 1
            sites: { main: { halls: { hall: {
              rows: { A: { racks: 1, x: -0.3 m }, B: { racks: 1, x: {{N(at - 0.3)}} m, y: {{N(at)}} m } }, pathways: {
              {{string.Join(",\n  ", texts)}} } } } } }
            devices: { a: { model: fixed-32x400, racks: hall/A/1 }, b: { model: fixed-32x400, racks: hall/B/1 } }
            links:
              l: { from: a, to: b, rate: 400G, type: 400GBASE-DR4, side: A, apart-from: m }
              m: { from: a, to: b, rate: 400G, type: 400GBASE-DR4, side: B }
            """;
    }

    private static bool AreApart(WayNet net)
    {
        var ones = Ways(net, net.SideOf("A")).ToList();
        return Ways(net, net.SideOf("B")).Any(other => ones.Any(one => !one.Overlaps(other)));
    }

    /// <summary>The stretches of every simple way from the first rack to the second.</summary>
    private static IEnumerable<HashSet<int>> Ways(WayNet net, int side)
    {
        var (passed, stretches) = (new HashSet<int> { net.PointOf(0) }, new Stack<int>());
        return From(net.PointOf(0));

        IEnumerable<HashSet<int>> From(int point)
        {
            if (point == net.PointOf(1))
            {
                yield return [.. stretches];
                yield break;
            }
            foreach (var e in net.EdgesAt(point).ToArray())
            {
                var (edge, far) = (net.Edges[e], net.Edges[e].Far(point));
                if ((edge.Side != 0 && edge.Side != side) || (net.IsRack(far) && far != net.PointOf(1))) continue;
                // Cables leave a hall at an exit and never pass it from tray to tray.
                if (net.IsExit(far) || !passed.Add(far)) continue;
                if (edge.Stretch >= 0) stretches.Push(edge.Stretch);
                foreach (var way in From(far)) yield return way;
                if (edge.Stretch >= 0) stretches.Pop();
                passed.Remove(far);
            }
        }
    }

    private static string N(double value) => Lanewright.Quantities.Numerals.Plain(value);

    private static JudgedPlan Compile(string east, string trunk, string links) => PlanBlock.Compile(Patched
        .Replace("EAST", east, StringComparison.Ordinal).Replace(", TRUNK", trunk.Length > 0 ? ", " + trunk : "", StringComparison.Ordinal)
        .Replace("LINKS", links, StringComparison.Ordinal));
}
