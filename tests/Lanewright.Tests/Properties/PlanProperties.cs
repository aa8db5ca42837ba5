using Lanewright.Deliverables;
using Lanewright.Rules;

namespace Lanewright.Tests.Properties;

/// <summary>What must hold of any plan, drawn by seeds that a failure prints.</summary>
public sealed class PlanProperties
{
    public static TheoryData<int> Seeds => new(Enumerable.Range(1, 120));

    [Theory]
    [MemberData(nameof(Seeds))]
    public void RandomPlan_IsJudgedWithoutAFallAndTheSameEachTime(int seed)
    {
        var plan = new RandomPlans(seed).Next();
        Assert.Empty(Documents.Differences(PlanBlock.Compile(plan), PlanBlock.Compile(plan)));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void ReorderedTwin_GivesTheSameDocuments(int seed)
    {
        var plan = new RandomPlans(seed).Next();
        var twin = PlanTwin.Shuffled(plan, seed);
        var one = PlanBlock.Compile(plan);
        var other = PlanBlock.Compile(twin);
        // Findings name lines, and lines are what differs; everything else is held byte by byte.
        Assert.Empty(Documents.Differences(one, other, "findings.json", "handover.xlsx", "report.html"));
        Assert.Equal(Codes(one), Codes(other));
    }

    [Theory]
    [InlineData("kestrel-bay-mistakes", 300)]
    public void MutatedPlan_IsRefusedInWordsAndNeverFalls(string example, int times)
    {
        var text = File.ReadAllText(Repository.Path("examples", example, "plan.yaml"));
        for (var seed = 0; seed < times; seed++)
        {
            var mutated = Mutate(text, new Random(seed));
            try
            {
                PlanBlock.Compile(mutated.Replace("# file: ", "# ", StringComparison.Ordinal));
            }
            catch (Exception fault)
            {
                Assert.Fail($"seed {seed}: {fault}");
            }
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void SwappedSides_ChangeNoVerdictAndNoPrice(int seed)
    {
        var plans = Enumerable.Range(0, 40).Select(i => new RandomPlans((seed * 1000) + i).Next());
        foreach (var plan in plans.Where(p => !p.Contains("striped", StringComparison.Ordinal)))
        {
            var one = PlanBlock.Compile(plan);
            var other = PlanBlock.Compile(Swap(plan));
            if (one.Plan!.Links.Count != other.Plan!.Links.Count) continue;
            var (left, right) = (PlanSummary.Of(Expect.Designed(one)), PlanSummary.Of(Expect.Designed(other)));
            Assert.Equal((left.Passing, left.Unproven, left.Failing), (right.Passing, right.Unproven, right.Failing));
        }
    }

    [Fact]
    public void OtherUnits_ChangeNothing()
    {
        const string Metres = """
            lanewright: 1
            devices: { a: { model: fixed-32x400 }, b: { model: fixed-32x400 } }
            links: { l: { from: a, to: b, rate: 400G, length: 1500 m, attenuation: 0.35 dB/km, latency: 9 us } }
            """;
        var other = Metres
            .Replace("1500 m", "1.5 km", StringComparison.Ordinal)
            .Replace("400G", "0.4T", StringComparison.Ordinal)
            .Replace("9 us", "9000 ns", StringComparison.Ordinal);
        Assert.Empty(Documents.Differences(PlanBlock.Compile(Metres), PlanBlock.Compile(other)));
    }

    private static IEnumerable<string> Codes(JudgedPlan judged) =>
        judged.Findings.Select(f => $"{f.Kind.Code} {f.Count} {f.Message}").Order(StringComparer.Ordinal);

    private static string Swap(string plan) => string.Join('\n', plan.Split('\n').Select(SwapLine));

    private static string SwapLine(string line)
    {
        if (!line.Contains("{ from: ", StringComparison.Ordinal) || line.StartsWith("routes", StringComparison.Ordinal)) return line;
        return line
            .Replace(" from: ", " FROM ", StringComparison.Ordinal)
            .Replace(" to: ", " from: ", StringComparison.Ordinal)
            .Replace(" FROM ", " to: ", StringComparison.Ordinal);
    }

    private const string Marks = "{}[]:,&*#|>-'\"%@`\t\n 0129xG";

    /// <summary>Cuts, doubles, swaps and overwrites pieces of a text.</summary>
    private static string Mutate(string text, Random random)
    {
        var chars = text.ToList();
        for (var i = 0; i < random.Next(1, 12); i++)
        {
            var at = random.Next(chars.Count);
            switch (random.Next(6))
            {
                case 0: chars.RemoveRange(at, Math.Min(random.Next(1, 40), chars.Count - at)); break;
                case 1: chars.InsertRange(at, chars.GetRange(at, Math.Min(random.Next(1, 60), chars.Count - at))); break;
                case 2: chars[at] = Marks[random.Next(Marks.Length)]; break;
                case 3: chars[at] = (char)random.Next(32, 0x2FFF); break;
                case 4: chars.InsertRange(at, "99999999999999999999"); break;
                default: chars.InsertRange(at, "-1e308 m"); break;
            }
        }
        return new string([.. chars]);
    }
}
