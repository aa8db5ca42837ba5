using CsCheck;
using Lanewright.Engineering.Pathways;
using Lanewright.Rules;

namespace Lanewright.Tests.Pathways;

/// <summary>Cables that find no room go the next way that has, and what that does to fills and lengths.</summary>
public sealed class OverflowTests
{
    // Six hosts of two 200G ports, twelve cables over a channel that holds some of them; worked by hand: the cable is 6.5 mm, 33.18 mm2,
    // and half of 20 mm x 10 mm is 100 mm2, so three have room. Round the other end it is 8.8 m farther.
    private const string Hall = """
        lanewright: 1
        policy: { contingency: 0 %, service: 0 m, in-rack: 0 m }
        sites: { main: { halls: { hall: { rows: { A: { racks: 2 }, B: { racks: 2, y: 4 m } }, pathways: {
          front: { from: { x: 0 m, y: 0 m }, to: { x: 5 m, y: 0 m }, width: 300 mm },
          back: { from: { x: 0 m, y: 4 m }, to: { x: 5 m, y: 4 m }, width: 300 mm },
          west: { from: { x: 0 m, y: 0 m }, to: { x: 0 m, y: 4 m }, width: WEST },
          east: { from: { x: 5 m, y: 0 m }, to: { x: 5 m, y: 4 m }, width: EAST } } } } } }
        devices:
          a: { model: fixed-32x400, racks: hall/A/1, unit: 40 }
          b: { model: fixed-32x400, racks: hall/B/1, unit: 40 }
        links:
          up: { from: a, to: b, count: COUNT, rate: 400G, type: 400GBASE-DR4, cord: cord-os2-mpo12 }
        """;

    [Fact]
    public void Cables_TakeTheNextWay_AndAreOrderedForIt()
    {
        // A cord of 3.0 mm takes 7.07 mm2: fourteen have room in 100 mm2.
        var designed = Expect.Designed(Compile(20, "300 mm, depth: 10 mm"));
        var book = designed.Pathways.Value;
        Assert.Equal(14, book.Fills.Single(f => f.Pathway.Name == "west").Cables);
        Assert.Equal(6, book.Fills.Single(f => f.Pathway.Name == "east").Cables);
        Assert.Equal(6, book.Detours.Moves.Length);
        // From x = 0.3 m: 0.3 m either side of 4 m against 4.7 m either side of 4 m.
        Assert.All(book.Detours.Moves, m => Assert.Equal(2 * (4.7 - 0.3), m.MoreMetres, 9));
        // The first of the plan stay, and each is ordered as long as its own way.
        Assert.Equal([14, 15, 16, 17, 18, 19], book.Detours.Moves.Select(m => m.Key.Index).Order());
        Assert.Equal(8.8, book.LengthOf(19)!.Value.Metres - book.LengthOf(0)!.Value.Metres, 9);
        Assert.True(designed.Design.SolutionOf(19)!.Length >= book.LengthOf(19)!.Value);
        Assert.DoesNotContain(designed.Findings, f => f.Kind.Code == "LW4101");
        Assert.Contains(designed.Findings, f => f.Kind.Code == "LW4105" && f.Count == 6);
    }

    [Fact]
    public void WhereNoWayHasRoom_TheStretchIsNamed()
    {
        var judged = Compile(30, "20 mm, depth: 10 mm");
        var book = Expect.Designed(judged).Pathways.Value;
        Assert.Equal(14, book.Fills.Single(f => f.Pathway.Name == "east").Cables);
        Assert.Equal(16, book.Fills.Single(f => f.Pathway.Name == "west").Cables);
        var finding = Assert.Single(judged.Findings, f => f.Kind.Code == "LW4101");
        Assert.Contains("(0.0, 0.0, 2.6) m and (0.0, 4.0, 2.6) m", finding.Message, StringComparison.Ordinal);
    }

    // A tray with room for all bears seven and a half of the cords: seven stay. Where the way round bears two, the rest stays and is told.
    [Fact]
    public void Cables_TheTrayDoesNotBear_TakeTheNextWay()
    {
        const string wide = "300 mm";
        var all = Expect.Designed(Compile(20, wide, wide)).Pathways.Value.Fills.Single(f => f.Pathway.Name == "west");
        Assert.Equal(20, all.Cables);
        var each = all.KilogramsAMetre / all.Cables;
        var west = $"{wide}, load-rating: {N(7.5 * each)} kg/m";
        var judged = Compile(20, wide, west);
        var book = Expect.Designed(judged).Pathways.Value;
        Assert.Equal(7, book.Fills.Single(f => f.Pathway.Name == "west").Cables);
        Assert.Equal(13, book.Fills.Single(f => f.Pathway.Name == "east").Cables);
        Assert.All(book.Detours.Moves, m => Assert.True(m.IsForLoad));
        Assert.DoesNotContain(judged.Findings, f => f.Kind.Code is "LW4110" or "LW4101");
        var finding = Assert.Single(judged.Findings, f => f.Kind.Code == "LW4105");
        Assert.Equal(13, finding.Count);
        Assert.Contains("cannot bear 13 of the cables", finding.Message, StringComparison.Ordinal);
        judged = Compile(20, $"{wide}, load-rating: {N(2 * each)} kg/m", west);
        Assert.Equal(2, Expect.Designed(judged).Pathways.Value.Fills.Single(f => f.Pathway.Name == "east").Cables);
        Assert.Equal("west", Assert.Single(judged.Findings, f => f.Kind.Code == "LW4110").Subject);
    }

    // With one overfull stretch and cables alike no other choice of cables is shorter in all: held against every choice (brute force). A
    // way round is what the way is where the gate does not stand.
    [Fact]
    public void Moves_AreTheCheapest_WhereOneStretchIsFull()
    {
        Gen.Select(Gen.Int[1, 30].Array[6], Gen.Int[1, 5]).Sample(
            (racks, room) =>
            {
                // 7.07 mm2 a cord: a gate of 10 mm by 1.5 mm has room for one at half of its section, one of 3 mm for two, and so on.
                const string west = "west: { from: { x: 0 m, y: 0 m }, to: { x: 0 m, y: 4 m }, width: ";
                var gated = Book(racks, $"{west}10 mm, depth: {N(1.5 * room)} mm }}, ");
                var free = Book(racks, "west: { from: { x: 0 m, y: 0 m }, to: { x: 0 m, y: 4 m }, width: 300 mm }, ");
                var round = Book(racks, "");
                var more = Enumerable.Range(0, racks.Length)
                    .Select(l => (round.LengthOf(l)!.Value - free.LengthOf(l)!.Value).Metres).ToArray();
                var best = Choices(racks.Length, racks.Length - room).Min(chosen => chosen.Sum(l => more[l]));
                Assert.Equal(best, gated.Detours.Moves.Sum(m => m.MoreMetres), 6);
                Assert.Equal(room, gated.Fills.Single(f => f.Pathway.Name == "west").Cables);
            },
            iter: 12, threads: 1);

        static PathwayBook Book(int[] racks, string west)
        {
            var devices = string.Join("\n  ", racks.Select((r, i) =>
                $"d{i}: {{ model: fixed-32x400, racks: hall/A/{N(r)}, unit: {N((6 * i) + 2)} }}"));
            var links = string.Join("\n  ", racks.Select((_, i) =>
                $"l{i}: {{ from: d{i}, to: b, rate: 400G, type: 400GBASE-DR4, cord: cord-os2-mpo12 }}"));
            return Expect.Designed(PlanBlock.Compile($$"""
                lanewright: 1
                policy: { contingency: 0 %, service: 0 m, in-rack: 0 m }
                sites: { main: { halls: { hall: { rows: { A: { racks: 30 }, B: { racks: 1, y: 4 m } }, pathways: { {{west}}
                  front: { from: { x: 0 m, y: 0 m }, to: { x: 60 m, y: 0 m }, width: 300 mm },
                  back: { from: { x: 0 m, y: 4 m }, to: { x: 60 m, y: 4 m }, width: 300 mm },
                  east: { from: { x: 60 m, y: 0 m }, to: { x: 60 m, y: 4 m }, width: 300 mm } } } } } }
                devices:
                  b: { model: fixed-32x400, racks: hall/B/1, unit: 40 }
                  {{devices}}
                links:
                  {{links}}
                """)).Pathways.Value;
        }
    }

    // Property of the issue: adding a cable never lowers a fill, and fills add up to what is laid.
    [Fact]
    public void AddingACable_NeverLowersAFill()
    {
        double[] before = [];
        for (var count = 1; count <= 32; count++)
        {
            var book = Expect.Designed(Compile(count, "30 mm, depth: 10 mm")).Pathways.Value;
            var fills = book.Fills.Select(f => f.SquareMillimetres).ToArray();
            if (before.Length > 0) Assert.All(fills.Zip(before), f => Assert.True(f.First >= f.Second - 1e-9));
            before = fills;
        }
    }

    private static string N(double value) => Lanewright.Quantities.Numerals.Plain(value);

    private static IEnumerable<int[]> Choices(int of, int take) => Enumerable.Range(0, 1 << of)
        .Select(mask => Enumerable.Range(0, of).Where(i => (mask & (1 << i)) != 0).ToArray())
        .Where(c => c.Length == take);

    private static JudgedPlan Compile(int count, string east, string west = "20 mm, depth: 10 mm") => PlanBlock.Compile(Hall
        .Replace("WEST", west, StringComparison.Ordinal)
        .Replace("COUNT", count.ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal)
        .Replace("EAST", east, StringComparison.Ordinal));
}
