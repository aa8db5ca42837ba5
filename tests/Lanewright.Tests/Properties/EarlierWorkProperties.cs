using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Tests.Properties;

/// <summary>A compilation that uses what earlier ones found gives the same as one from scratch, byte for byte, whatever was edited
/// between them. Plans and edits are drawn by seeds that a failure prints.</summary>
public sealed class EarlierWorkProperties
{
    private const int Edits = 7;

    public static TheoryData<int> Seeds => new(Enumerable.Range(1, 32));

    [Theory]
    [MemberData(nameof(Seeds))]
    public void EditedPlan_IsJudgedAsFromScratch(int seed)
    {
        var random = new Random(seed);
        var earlier = new EarlierWork();
        List<Dictionary<string, string>> states = [PlanInFiles(seed)];
        for (var edit = 0; edit <= Edits; edit++)
        {
            AssertSame(states[^1], earlier, $"seed {seed}, edit {edit}");
            // Now and then back to a state that was there before, as undo does.
            states.Add(random.NextDouble() < 0.2 ? states[random.Next(states.Count)] : Edited(states[^1], random));
        }
    }

    [Theory]
    [InlineData("kestrel-bay")]
    [InlineData("kestrel-bay-mistakes")]
    public void EditedExample_IsJudgedAsFromScratch(string example)
    {
        var earlier = new EarlierWork();
        var files = Directory.GetFiles(Repository.Path("examples", example))
            .ToDictionary(f => Path.GetFileName(f), File.ReadAllText, StringComparer.Ordinal);
        var random = new Random(example.Length);
        AssertSame(files, earlier, example);
        for (var edit = 0; edit < 5; edit++)
        {
            files = Edited(files, random);
            AssertSame(files, earlier, $"{example}, edit {edit}");
        }
    }

    /// <summary>Work is counted, not time: what a network carries is reckoned once for all states of a plan that have it alike.</summary>
    [Fact]
    public void EditThatLeavesANetworkAlone_ReckonsNothingOfItAnew()
    {
        var earlier = new EarlierWork();
        var files = Directory.GetFiles(Repository.Path("examples", "kestrel-bay"))
            .ToDictionary(f => Path.GetFileName(f), File.ReadAllText, StringComparer.Ordinal);
        var before = Sweeps(files);
        Assert.NotEmpty(before);
        files["plan.yaml"] = files["plan.yaml"].Replace("revision: C", "revision: D", StringComparison.Ordinal);
        Assert.All(Sweeps(files).Zip(before), s => Assert.Same(s.First, s.Second));
        files["storage.yaml"] = files["storage.yaml"].Replace("dnode-01-1..8", "dnode-01-1..7", StringComparison.Ordinal);
        Assert.Contains(Sweeps(files).Zip(before), s => !ReferenceEquals(s.First, s.Second));
        return;

        List<object> Sweeps(Dictionary<string, string> state)
        {
            var judged = Compilation.Of(new TextFiles(state), "plan.yaml", earlier: earlier);
            return [.. judged.Designed!.Load.Demands.Select(d => d.Sweep).OfType<object>()];
        }
    }

    private static void AssertSame(Dictionary<string, string> files, EarlierWork earlier, string which)
    {
        var later = Compilation.Of(new TextFiles(files), "plan.yaml", earlier: earlier);
        var scratch = Compilation.Of(new TextFiles(files), "plan.yaml");
        var words = string.Join('\n', files.Select(f => $"# file: {f.Key}\n{f.Value}"));
        Assert.True(Told(later).SequenceEqual(Told(scratch)), $"findings differ: {which}\n{words}");
        Assert.Equal(later.RulesWaiting, scratch.RulesWaiting);
        var differing = Documents.Differences(later, scratch).ToList();
        Assert.True(differing.Count == 0, $"{string.Join(", ", differing)} differ: {which}\n{words}");
    }

    private static IEnumerable<string> Told(JudgedPlan judged) => judged.Findings.Select(f =>
        $"{f.Kind.Code} {f.Severity} {f.Span.Path}:{f.Span.Start}+{f.Span.Length} {f.Subject} {f.Count} {f.Message} {f.Evidence} "
        + string.Join(';', f.Related.Select(r => $"{r.Span.Path}:{r.Span.Start} {r.Note}")));

    /// <summary>A random plan with its devices in a file of their own and a catalogue of its own.</summary>
    private static Dictionary<string, string> PlanInFiles(int seed)
    {
        var text = new RandomPlans(seed).Next();
        var devices = text.IndexOf("devices:\n", StringComparison.Ordinal);
        var links = text.IndexOf("links:\n", StringComparison.Ordinal);
        return new(StringComparer.Ordinal)
        {
            ["plan.yaml"] = text[..devices] + text[links..] + "include: [devices.yaml]\n"
                + (seed % 3 == 0 ? "" : "catalogue: [own.yaml]\n"),
            ["devices.yaml"] = "lanewright: 1\n" + text[devices..links],
            ["own.yaml"] = """
                cords:
                  own-cord: { title: cord, fibre: OS2, near: LC-duplex, far: LC-duplex, lengths: 1 5 30 m, price: 4, diameter: 2 mm }
                  cord-os2-lc: { title: cord, fibre: OS2, near: LC-duplex, far: LC-duplex, lengths: 2 9 m, price: 3, diameter: 2 mm }
                """,
        };
    }

    private static Dictionary<string, string> Edited(Dictionary<string, string> files, Random random)
    {
        var names = files.Keys.Order(StringComparer.Ordinal).ToList();
        var name = names[random.Next(names.Count)];
        var lines = files[name].Split('\n').ToList();
        var at = random.Next(lines.Count);
        switch (random.Next(7))
        {
            case 0: lines.RemoveAt(at); break;
            case 1: lines.Insert(at, lines[random.Next(lines.Count)]); break;
            case 2: (lines[at], lines[random.Next(at, lines.Count)]) = (lines[random.Next(at, lines.Count)], lines[at]); break;
            case 3: lines[at] = OtherNumber(lines[at], random); break;
            case 4: lines[at] = OtherNumber(OtherNumber(lines[at], random), random); break;
            case 5: lines.Insert(at, "# " + random.Next()); break;
            default: lines[at] = Torn(lines[at], random); break;
        }
        return new(files, StringComparer.Ordinal) { [name] = string.Join('\n', lines) };
    }

    private static string OtherNumber(string line, Random random)
    {
        var digits = Enumerable.Range(0, line.Length).Where(i => char.IsAsciiDigit(line[i])).ToList();
        if (digits.Count == 0) return line;
        var at = digits[random.Next(digits.Count)];
        return line[..at] + (char)('0' + random.Next(10)) + line[(at + 1)..];
    }

    private static string Torn(string line, Random random)
    {
        if (line.Length == 0) return "x";
        var at = random.Next(line.Length);
        return line.Remove(at, random.Next(1, Math.Min(4, line.Length - at) + 1));
    }
}
