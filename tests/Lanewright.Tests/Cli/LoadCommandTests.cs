using System.Text.Json;

namespace Lanewright.Tests.Cli;

/// <summary>The load command as its callers see it.</summary>
public sealed class LoadCommandTests
{
    private const string Loads = "load tests/plans/loads/plan.yaml";

    [Fact]
    public void Json_HasTheAgreedShape()
    {
        using var json = Json($"{Loads} --json --pairs --seed 7", 0);
        var root = json.RootElement;
        foreach (var name in new[] { "maxUtilisation", "bisection" }) Assert.Equal(JsonValueKind.Number, root.GetProperty(name).ValueKind);
        foreach (var busy in root.GetProperty("busiest").EnumerateArray())
        {
            Assert.InRange(busy.GetProperty("utilisation").GetDouble(), 0, root.GetProperty("maxUtilisation").GetDouble() + 1e-9);
            Assert.True(busy.GetProperty("classSize").GetInt64() >= busy.GetProperty("links").GetInt64());
        }
        Assert.Equal(JsonValueKind.Object, root.GetProperty("worstCase").ValueKind);
        var failures = root.GetProperty("failures").EnumerateArray().ToList();
        Assert.NotEmpty(failures);
        foreach (var failure in failures)
        {
            Assert.NotEmpty(failure.GetProperty("what").GetString()!);
            Assert.True(failure.GetProperty("classSize").GetInt32() >= 1);
            Assert.True(failure.GetProperty("maxUtilisation").GetDouble() >= 0);
            Assert.InRange(failure.GetProperty("hostsDown").GetInt32(), 0, failure.GetProperty("hostsCut").GetInt32());
            Assert.True(failure.GetProperty("lost").GetDouble() >= failure.GetProperty("unrouted").GetDouble());
        }
        Assert.Equal(["across", "answer", "any", "backup"], root.GetProperty("demands").EnumerateArray()
            .Select(d => d.GetProperty("name").GetString()));
        var backup = root.GetProperty("demands").EnumerateArray().Single(d => d.GetProperty("name").GetString() == "backup");
        foreach (var name in new[] { "throughput", "collisions", "availability", "pairs" })
            Assert.Equal(JsonValueKind.Object, backup.GetProperty(name).ValueKind);
        var up = backup.GetProperty("availability");
        Assert.InRange(up.GetProperty("estimate").GetDouble(), up.GetProperty("lower").GetDouble(), up.GetProperty("upper").GetDouble());
    }

    [Fact]
    public void OneDemand_IsAnsweredAlone()
    {
        using var json = Json($"{Loads} --demand across --json", 0);
        Assert.Equal("across", Assert.Single(json.RootElement.GetProperty("demands").EnumerateArray()).GetProperty("name").GetString());
        // Sixteen hosts send 100G across: eight of 32 x 100G leave over four uplinks of each of two leaves.
        Assert.Equal(8 * 100 / (8 * 400.0), json.RootElement.GetProperty("maxUtilisation").GetDouble(), 1e-9);
    }

    [Fact]
    public void PlanWithoutDemands_IsAskedTwoThings()
    {
        using var json = Json("load tests/plans/starter/plan.yaml --json", 0);
        var names = json.RootElement.GetProperty("demands").EnumerateArray().Select(d => d.GetProperty("name").GetString());
        Assert.Equal(["all-to-all", "hose"], names);
        // Eight leaves with eight hosts of 200G and four uplinks of 400G: D/S is 1, and 56 of 63 other hosts are elsewhere.
        Assert.Equal(1, json.RootElement.GetProperty("worstCase").GetProperty("maxUtilisation").GetDouble(), 1e-9);
        Assert.Equal(56 / 63.0, json.RootElement.GetProperty("maxUtilisation").GetDouble(), 1e-9);
    }

    [Theory]
    [InlineData("per-hop")]
    [InlineData("path-weighted")]
    [InlineData("ideal")]
    public void Rules_AreKeptApart(string rule)
    {
        using var json = Json($"{Loads} --demand across --rule {rule} --json", 0);
        Assert.Equal(rule, json.RootElement.GetProperty("rule").GetString());
        Assert.Equal(0.25, json.RootElement.GetProperty("maxUtilisation").GetDouble(), 1e-6);
    }

    [Theory]
    [InlineData("load no-such-plan.yaml")]
    [InlineData(Loads + " --rule random")]
    [InlineData(Loads + " --demand acros")]
    [InlineData(Loads + " --seed -3")]
    [InlineData("load tests/plans/media/plan.yaml")]
    public void CannotRunWithTwoAndSaysWhy(string arguments)
    {
        var run = Program.Run(arguments);
        Assert.Equal(2, run.Code);
        Assert.NotEmpty(run.Error);
        Assert.DoesNotContain("   at ", run.Error + run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void SameQuestion_GivesTheSameBytes() =>
        Assert.Equal(Program.Run($"{Loads} --json --pairs").Output, Program.Run($"{Loads} --json --pairs").Output);

    private const string Torn = """
        lanewright: 1
        devices:
          host: { model: server-2u, cards: nic-2x200, count: 8 }
          leaf: { model: fixed-32x400, count: 2 }
        links:
          edge: { from: host, to: { of: leaf, breakout: 2x200G }, pattern: each-to-each, rate: 200G, length: 2 m }
          across: { from: leaf-1, to: leaf-2, rate: 400G, length: 2 m }
        demands:
          backup: { from: hots, to: host-2, rate: 10G }
          some: { kind: all-to-all, among: [host, hots], rate: 10G }
          work: { kind: all-to-all, among: host, rate: 10G }
        """;

    [Fact]
    public void PlanWithErrors_PrintsThemFirstAndTellsWhatIsLeftOut()
    {
        var path = Path.Combine(Directory.CreateTempSubdirectory("lanewright-").FullName, "plan.yaml");
        File.WriteAllText(path, Torn);
        var run = Program.Run($"load {path}");
        Assert.Equal(1, run.Code);
        var lines = run.Output.Split('\n').Select(l => l.Trim()).ToList();
        Assert.Contains("LW1101", lines[0], StringComparison.Ordinal);
        Assert.Contains("left out, as they could not be read: backup", lines);
        Assert.Contains("studied only in part: some", lines);
        Assert.True(lines.FindIndex(l => l.StartsWith("left out", StringComparison.Ordinal))
            < lines.FindIndex(l => l.StartsWith("work:", StringComparison.Ordinal)));
        using var json = Json($"load {path} --json", 1);
        Assert.Equal(2, json.RootElement.GetProperty("errors").GetInt32());
        Assert.Equal("backup", Assert.Single(json.RootElement.GetProperty("leftOut").EnumerateArray()).GetString());
        var check = Program.Run($"check {path}");
        var waiting = Lanewright.Rules.RuleBook.All.Count(r => r.NeedsWholePlan);
        Assert.Contains($"{waiting} rules about networks and loads wait until", check.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("wait until", Program.Run("check tests/plans/loads/plan.yaml").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void WorstCase_SaysWhoseRatesItKeepsTo()
    {
        Assert.Contains("any traffic can do, the hosts of 'any' at", Program.Run(Loads).Output, StringComparison.Ordinal);
        var alone = Program.Run($"{Loads} --demand across").Output;
        Assert.Contains("any traffic can do, all hosts at line rate", alone, StringComparison.Ordinal);
    }

    private static JsonDocument Json(string arguments, int code)
    {
        var run = Program.Run(arguments);
        Assert.True(run.Code == code, run.Error + run.Output);
        return JsonDocument.Parse(run.Output);
    }
}
