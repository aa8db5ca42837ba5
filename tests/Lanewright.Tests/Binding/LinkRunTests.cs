using CsCheck;

namespace Lanewright.Tests.Binding;

/// <summary>Links in runs: both sides cut into consecutive devices, run by run.</summary>
public sealed class LinkRunTests
{
    [Fact]
    public void Runs_JoinWhatStandsInRunsOfTheSameNumber() =>
        Gen.Select(Gen.Int[1, 6], Gen.Int[1, 4], Gen.Int[1, 5], Gen.Int[1, 3], Gen.Int[0, 4]).Sample(drawn =>
        {
            var (fromRun, toRun, runs, count, missing) = drawn;
            var from = Math.Max(((runs - 1) * fromRun) + 1, (runs * fromRun) - missing);
            var to = runs * toRun;
            var plan = Expect.Designed(PlanBlock.Compile(Plan(from, to, $"from-run: {fromRun}, to-run: {toRun}, count: {count}"))).Plan;
            var joined = Joined(plan);
            // The definition, device by device.
            for (var i = 0; i < from; i++)
                for (var j = 0; j < to; j++)
                    Assert.Equal(i / fromRun == j / toRun ? count : 0, joined.GetValueOrDefault((i, j)));
        }, iter: 60);

    [Theory]
    [InlineData(10, 4, new[] { 2, 3, 2, 3 })]
    [InlineData(9, 4, new[] { 2, 2, 2, 3 })]
    [InlineData(1, 1, new[] { 1 })]
    public void LengthLeftOpen_SpreadsEvenly(int from, int to, int[] expected)
    {
        var plan = Expect.Designed(PlanBlock.Compile(Plan(from, to, "count: 1"))).Plan;
        var joined = Joined(plan);
        Assert.Equal(expected, Enumerable.Range(0, to).Select(j => joined.Where(l => l.Key.To == j).Sum(l => l.Value)));
        Assert.Equal(Enumerable.Range(0, from), joined.Keys.Select(k => k.From).Order());
    }

    [Theory]
    [InlineData(9, 2, "from-run: 3")]
    [InlineData(3, 2, "from-run: 3")]
    public void UnequalNumbersOfRuns_AreReported(int from, int to, string keys) =>
        Assert.Contains(PlanBlock.Compile(Plan(from, to, keys)).Findings, f => f.Kind.Code == "LW1301");

    [Fact]
    public void LengthOfRunsWithoutRuns_IsNotLostInSilence() =>
        Assert.Contains(
            PlanBlock.Compile(Plan(4, 4, "from-run: 2").Replace("in-runs", "paired", StringComparison.Ordinal)).Findings,
            f => f.Kind.Code == "LW0104");

    private static string Plan(int from, int to, string keys) =>
        $$"""
        lanewright: 1
        devices:
          a: { model: fixed-128x100, count: {{from}} }
          b: { model: fixed-128x100, count: {{to}} }
        links: { up: { from: a, to: b, rate: 100G, length: 2 m, pattern: in-runs, {{keys}} } }
        """;

    /// <summary>Links by place on the two sides: group a stands first.</summary>
    private static Dictionary<(int From, int To), int> Joined(Lanewright.Model.Plan plan)
    {
        var first = plan.Devices.Groups.Single(g => g.Name == "b").First;
        return Enumerable.Range(0, plan.Links.Count)
            .CountBy(l => (plan.Links.FromDevice(l), plan.Links.ToDevice(l) - first))
            .ToDictionary();
    }
}
