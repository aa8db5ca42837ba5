using Lanewright.Findings;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Tests.Properties;

/// <summary>What a compilation takes over from earlier ones, and what it must not.</summary>
public sealed class EarlierWorkTests
{
    private const string Plan = """
        lanewright: 1
        name: small
        policy: { prefer: [OS2] }
        catalogue: [own.yaml]
        include: [more.yaml]
        sites: { s: { halls: { h: { rows: { A: { racks: 4 }, B: { racks: 4, y: 3 m } } } } } }
        links:
          up: { from: leaf, to: spine, pattern: each-to-each, rate: 400G, cord: own-cord }
          side: { from: host, to: leaf, pattern: same-rack, rate: 200G }

        """;

    private const string More = """
        lanewright: 1
        devices:
          leaf: { model: fixed-32x400, racks: h/A, per-rack: 2, unit: 40 }
          host: { model: server-2u, cards: nic-2x200, racks: h/A, per-rack: 4, unit: 4 }
          spine: { model: fixed-64x400, count: 2, racks: h/B, unit: 10 }

        """;

    private const string Own = """
        cords:
          own-cord: { title: cord, fibre: OS2, near: LC-duplex, far: LC-duplex, lengths: 1 5 30 m, step: 5 m, price: 4, diameter: 2 mm }

        """;

    private readonly EarlierWork earlier = new();

    [Fact]
    public void WaysToMakeLinks_AreTakenOverWhereNothingTheyRestOnChanged()
    {
        var before = Compile(Files());
        var after = Compile(Files(plan: Plan.Replace("name: small", "name: other\ntitle: Other", StringComparison.Ordinal)));
        Assert.NotEmpty(before.Design!.Choices);
        foreach (var (one, other) in before.Design.Choices.Zip(after.Design!.Choices))
            Assert.Same(one.Candidates[0], other.Candidates[0]);
        Assert.Equal("other", after.Plan!.Name);
        Assert.NotSame(before.Plan!.Statements[0], after.Plan.Statements[0]);
    }

    [Fact]
    public void PriceInTheCatalogue_ChangesTheParts()
    {
        var before = PriceOf(Compile(Files()), "own-cord");
        var after = PriceOf(Compile(Files(own: Own.Replace("price: 4,", "price: 44,", StringComparison.Ordinal))), "own-cord");
        Assert.Equal(before + 40, after);
        Assert.Equal(before, PriceOf(Compile(Files()), "own-cord"));
    }

    [Fact]
    public void FaultInTheCatalogue_IsToldAgainWhenAnotherFileIsEdited()
    {
        var own = Own.Replace("price: 4,", "price: four,", StringComparison.Ordinal);
        var first = FaultsIn(Compile(Files(own: own)), "own.yaml");
        Assert.NotEmpty(first);
        var again = FaultsIn(Compile(Files(plan: Plan + "# a line more\n", own: own)), "own.yaml");
        Assert.Equal(first, again);
        Assert.Empty(FaultsIn(Compile(Files()), "own.yaml"));
    }

    [Fact]
    public void FaultInAnIncludedFile_ComesAndGoesWithIt()
    {
        var more = More.Replace("count: 2", "count: two", StringComparison.Ordinal);
        Assert.Empty(FaultsIn(Compile(Files()), "more.yaml"));
        var torn = FaultsIn(Compile(Files(more: more)), "more.yaml");
        Assert.NotEmpty(torn);
        Assert.Equal(torn, FaultsIn(Compile(Files(plan: Plan + "\n", more: more)), "more.yaml"));
        Assert.Empty(FaultsIn(Compile(Files()), "more.yaml"));
    }

    [Fact]
    public void FindingsOfAnUntouchedSet_PointAtItsLineAfterLinesWereAddedAbove()
    {
        var plan = Plan.Replace("rate: 400G, cord: own-cord", "rate: 400G, length: 40 km", StringComparison.Ordinal);
        var before = LineOf(Compile(Files(plan: plan)), "up");
        var after = LineOf(Compile(Files(plan: plan.Replace("links:", "# one\n# two\nlinks:", StringComparison.Ordinal))), "up");
        Assert.Equal(before + 2, after);
    }

    [Fact]
    public void SectionsInAnotherOrder_AreJudgedAsFromScratch()
    {
        Compile(Files());
        var at = Plan.IndexOf("links:", StringComparison.Ordinal);
        var turned = Plan[at..] + Plan[..at];
        var files = Files(plan: turned);
        Assert.Empty(Documents.Differences(Compile(files), Compilation.Of(files, "plan.yaml")));
    }

    [Fact]
    public void ManyFindingsOfOneKind_AreCountedAsFromScratch()
    {
        // More of one kind than are told: what was read before must not be told as if there were room.
        var many = string.Concat(Enumerable.Range(1, FindingSink.MostOfOneKind - 1).Select(i => $"  x{i}: {{ model: 7up, unit: many }}\n"));
        var more = More + many;
        var own = Own + string.Concat(Enumerable.Range(1, 3).Select(i => $"  torn-{i}: {{ fibre: OS2, price: some }}\n"));
        Compile(Files(own: own));
        var files = Files(more: more, own: own);
        var (later, scratch) = (Compile(files), Compilation.Of(files, "plan.yaml"));
        Assert.Equal(scratch.Findings.Select(f => f.Message), later.Findings.Select(f => f.Message));
    }

    [Fact]
    public void BrokenOff_LeavesNothingHalfKnown()
    {
        using var stop = new CancellationTokenSource();
        Assert.Throws<OperationCanceledException>(() => Compilation.Of(
            Files(), "plan.yaml", step =>
            {
                if (step.StartsWith("judging", StringComparison.Ordinal)) stop.Cancel();
            }, earlier, stop.Token));
        Assert.Empty(Documents.Differences(Compile(Files()), Compilation.Of(Files(), "plan.yaml")));
    }

    private JudgedPlan Compile(TextFiles files) => Compilation.Of(files, "plan.yaml", earlier: earlier);

    private static TextFiles Files(string plan = Plan, string more = More, string own = Own) =>
        new([new("plan.yaml", plan), new("more.yaml", more), new("own.yaml", own)]);

    private static decimal PriceOf(JudgedPlan judged, string part) =>
        judged.Parts.First(p => p.Item.Name == part).Item.Price.Units;

    private static List<string> FaultsIn(JudgedPlan judged, string file) =>
        [.. judged.Findings.Where(f => f.Span.Path == file && f.Severity == Severity.Error).Select(f => $"{f.Span.Position} {f.Message}")];

    private static int LineOf(JudgedPlan judged, string set) =>
        judged.Findings.First(f => f.Subject == set && f.Severity == Severity.Error).Span.Position.Line;
}
