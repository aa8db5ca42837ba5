using System.Diagnostics;
using System.Text;
using Lanewright.Findings;

namespace Lanewright.Tests.Properties;

/// <summary>Texts made to harm a reader are refused in words, in little work.</summary>
public sealed class HostileTextTests
{
    private const string Head = "lanewright: 1\nname: x\n";

    [Fact]
    public void RepeatedRepetitions_AreBounded()
    {
        var text = new StringBuilder(Head).Append("stock:\n  - &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (var i = 1; i < 12; i++) text.Append($"  - &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 9))}]\n");
        AssertRaises(text.ToString(), "LW0103");
    }

    [Fact]
    public void DeepNesting_IsBounded() => AssertRaises(Head + "stock: " + new string('[', 100_000), "LW0103");

    [Fact]
    public void DeepMaps_AreBounded() =>
        AssertRaises(Head + string.Concat(Enumerable.Range(0, 200).Select(i => new string(' ', i) + "a:\n")), "LW0103");

    [Fact]
    public void LongValue_IsBounded() => AssertRaises(Head + "title: " + new string('x', 200_000), "LW0103");

    [Fact]
    public void ManyValues_AreBounded() =>
        AssertRaises(Head + "stock: [" + string.Concat(Enumerable.Repeat("x,", 1_100_000)) + "]", "LW0103");

    [Fact]
    public void RepetitionOfItself_IsRefused() => AssertRaises(Head + "stock: &a [*a]\n", "LW0101");

    [Theory]
    [InlineData("title: \"a\\e[31mred\"")]
    [InlineData("title: \"a\\0b\"")]
    [InlineData("title: \"a\\x9b31m\"")]
    [InlineData("revision: \"\\x7f\"")]
    [InlineData("devices: { \"a\\eb\": { model: fixed-32x400 } }")]
    [InlineData("stock-files: s.csv\n# file: s.csv\nmodel,quantity,note\nm-400g-dr4-dd,1,a\u001bb")]
    public void ControlCharacters_ReachNeitherTerminalNorDocument(string text)
    {
        var judged = PlanBlock.Compile(Head + text + "\n");
        Assert.Contains(judged.Findings, f => f.Kind.Code == "LW0107");
        Assert.DoesNotContain(judged.Findings, f => f.Message.Any(IsControl));
        foreach (var document in Documents.Of(judged).Where(d => !d.Key.EndsWith(".xlsx", StringComparison.Ordinal)))
            Assert.False(Encoding.UTF8.GetString(document.Value).Any(IsControl), document.Key);

        static bool IsControl(char c) => char.IsControl(c) && c is not ('\t' or '\n' or '\r');
    }

    [Theory]
    [InlineData("include: other", "someone:$6$abcdef:19000:0:99999:7:::\ndaemon:*:19000:0:99999:7:::\n")]
    [InlineData("catalogue: other", "someone: $6$abcdef\ndaemon: x\n")]
    [InlineData("include: other", "dear someone, $6$abcdef is my word\n")]
    public void ForeignFile_IsNotRepeated(string mention, string content)
    {
        var judged = PlanBlock.Compile($"{Head}{mention}\n# file: other\n{content}");
        Assert.Contains(judged.Findings, f => f.Kind.Code == "LW0106");
        Assert.DoesNotContain(judged.Findings, f => f.Message.Contains("abcdef", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("devices: { a: { model: LONG } }")]
    [InlineData("links: { LONG: { from: a, to: b, rate: 400G } }")]
    [InlineData("include: LONG")]
    [InlineData("devices: { a: { model: fixed-32x400, racks: LONG/A } }")]
    public void LongWords_AreCutInFindings(string text)
    {
        var judged = PlanBlock.Compile(Head + text.Replace("LONG", new string('x', 5000), StringComparison.Ordinal));
        Assert.NotEmpty(judged.Findings);
        Assert.All(judged.Findings, f => Assert.True(f.Message.Length < 400, f.Message));
    }

    [Fact]
    public void FilesThatIncludeEachOther_AreReadOnce()
    {
        var judged = PlanBlock.Compile(Head + "include: [b.yaml]\n# file: b.yaml\nlanewright: 1\ninclude: [plan.yaml]\n");
        Assert.DoesNotContain(judged.Findings, f => f.Severity == Severity.Error);
    }

    [Theory]
    [InlineData("count: 1000000, racks: h/A")]
    [InlineData("count: 99999999999")]
    [InlineData("count: -1")]
    public void SillyCounts_AreRefused(string keys)
    {
        var judged = PlanBlock.Compile(
            $"{Head}sites: {{ s: {{ halls: {{ h: {{ rows: {{ A: {{ racks: 2 }} }} }} }} }} }}\n"
            + $"devices: {{ a: {{ model: server-1u, {keys} }} }}\n");
        Assert.Contains(judged.Findings, f => f.Severity == Severity.Error);
    }

    [Fact]
    public void CagesBeyondAnyBuilding_AreRefusedBeforeTheyAreMade()
    {
        const string bank = "{ count: 1000, form-factor: SFP28, lane-rates: [25G], modes: [1x25G] }";
        var judged = PlanBlock.Compile(Head + $$"""
            catalogue: own.yaml
            devices: { a: { model: huge, count: 300000 } }
            # file: own.yaml
            devices: { huge: { kind: switch, title: Huge, price: 1, cages: [{{bank}}] } }
            """);
        Assert.Contains(judged.Findings, f => f.Kind.Code == "LW1105");
        Assert.Equal(0, judged.Plan!.Devices.Count);
    }

    [Fact]
    public void OneCauseAThousandTimes_IsCountedAndNotListed()
    {
        var groups = string.Concat(Enumerable.Range(0, 1000).Select(i => $"  g{i}: {{ model: servr-{i} }}\n"));
        var judged = PlanBlock.Compile(Head + "devices:\n" + groups);
        Assert.Equal(FindingSink.MostOfOneKind, judged.Findings.Count(f => f.Kind.Code == "LW1101"));
    }

    [Fact]
    public void LinksBeyondAnyBuilding_AreRefusedBeforeTheyAreMade()
    {
        var judged = PlanBlock.Compile(Head + """
            devices: { a: { model: server-1u, count: 100000 }, b: { model: server-1u, count: 100000 } }
            links: { l: { from: a, to: b, pattern: each-to-each, count: 1000, rate: 1G, length: 5 m } }
            """);
        Assert.Contains(judged.Findings, f => f.Kind.Code == "LW1105");
        Assert.Equal(0, judged.Plan!.Links.Count);
    }

    private static void AssertRaises(string text, string code)
    {
        var before = Process.GetCurrentProcess().PeakWorkingSet64;
        var judged = PlanBlock.Compile(text);
        Assert.Contains(code, judged.Findings.Select(f => f.Kind.Code));
        Assert.True(Process.GetCurrentProcess().PeakWorkingSet64 - before < 1L << 30, "a hostile text took more than a gibibyte");
    }
}
