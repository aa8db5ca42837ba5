using System.Text.Json;

namespace Lanewright.Tests.Cli;

/// <summary>The program as its callers see it: names, exit codes, and JSON that keeps its shape.</summary>
public sealed class CommandLineTests
{
    [Theory]
    [InlineData("--version")]
    [InlineData("--help")]
    [InlineData("link --help")]
    [InlineData("explain")]
    [InlineData("explain LW2401")]
    [InlineData("explain LossBudgetExceeded --json")]
    [InlineData("standards 400GBASE-DR4")]
    [InlineData("standards --rate 400G --medium OS2 --reach 2km")]
    [InlineData("standards --find 0x0C --table module-codes")]
    [InlineData("catalogue")]
    [InlineData("catalogue --kind switch --rate 400G --form-factor QSFP-DD")]
    [InlineData("catalogue m-400g-dr4-dd")]
    [InlineData("catalogue --find MPO-16 --json")]
    [InlineData("catalogue --plan examples/kestrel-bay --kind cord")]
    [InlineData("schema")]
    [InlineData("schema --catalogue")]
    [InlineData("check examples/kestrel-bay")]
    [InlineData("why examples/kestrel-bay s-edge")]
    public void Runs(string arguments)
    {
        var run = Program.Run(arguments);
        Assert.True(run.Code == 0, run.Error + run.Output);
        Assert.NotEmpty(run.Output);
    }

    [Theory]
    [InlineData("G.694.1", "DWDM")]
    [InlineData("clause 151", "400GBASE-FR4")]
    [InlineData("NEC chapter 9", "duct")]
    public void Standards_AreFoundByTheDocumentThatSetsThem(string document, string subject)
    {
        var found = JsonDocument.Parse(Program.Run($"standards --find \"{document}\" --json").Output).RootElement;
        Assert.Contains(subject, found.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check examples/kestrel-bay-mistakes")]
    [InlineData("link --type 400GBASE-DR4 --length 501m")]
    [InlineData("link --rate 400G --medium DAC --length 30m")]
    [InlineData("mate 400GBASE-FR4 100G-CWDM4")]
    [InlineData("link --rate 1T --length 5m")]
    public void AnswersNoWithOne(string arguments) => Assert.Equal(1, Program.Run(arguments).Code);

    [Theory]
    [InlineData("")]
    [InlineData("bild x")]
    [InlineData("check no-such-plan.yaml")]
    [InlineData("build examples/kestrel-bay")]
    [InlineData("link --type 400GBASE-DR5 --length 5m")]
    [InlineData("link --type 400GBASE-DR4 --length 5")]
    [InlineData("link --type 400GBASE-DR4 --length 5m --connectors 2 --reflectance 45dB")]
    [InlineData("link --length 5m")]
    [InlineData("link --type 400GBASE-DR4 --rate 400G --length 5m")]
    [InlineData("link --type 400GBASE-DR4 --length 5m --connectors -1")]
    [InlineData("mate 400GBASE-DR4 QSFPDD/400GBASE-DR4")]
    [InlineData("explain LW9999")]
    [InlineData("standards --table nothing")]
    [InlineData("catalogue --kind toaster")]
    [InlineData("catalogue --form-factor QSFP29")]
    [InlineData("catalogue m-400g-dr5-dd")]
    [InlineData("catalogue --plan no-such-plan.yaml")]
    [InlineData("standards 400GBASE-XY")]
    [InlineData("why examples/kestrel-bay nothing")]
    [InlineData("new examples")]
    [InlineData("build examples/kestrel-bay --out \"\"")]
    [InlineData("new \"\"")]
    [InlineData("check /dev/zero")]
    public void CannotRunWithTwoAndSaysWhy(string arguments)
    {
        var run = Program.Run(arguments);
        Assert.Equal(2, run.Code);
        Assert.NotEmpty(run.Error);
        Assert.DoesNotContain("   at ", run.Error + run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("none", "it does not exist")]
    [InlineData("large", "it is larger than 64 MiB")]
    [InlineData("bytes", "it is no UTF-8 text")]
    public void FileThatCannotBeRead_IsToldWhy(string kind, string reason)
    {
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        try
        {
            var path = Path.Combine(folder, "plan.yaml");
            if (kind == "large")
            {
                using var file = File.Create(path);
                file.SetLength((64 * 1024 * 1024) + 1);
            }
            if (kind == "bytes") File.WriteAllBytes(path, [0xC3, 0x28, 0xFF, 0xFE]);
            var run = Program.Run("check " + path);
            Assert.Equal(2, run.Code);
            Assert.EndsWith($"cannot be read: {reason}\n", run.Error, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Link_HasTheAgreedShape()
    {
        using var json = Json(
            "link --type 400GBASE-DR4 --medium OS2 --length 500m --connectors 4 --connector-loss 0.35dB "
            + "--splices 2 --splice-loss 0.1dB --reflectance -45dB --json");
        Assert.Equal("400GBASE-DR4", json.RootElement.GetProperty("type").GetString());
        Assert.Equal("pass", json.RootElement.GetProperty("verdict").GetString());
        Assert.Equal(JsonValueKind.String, json.RootElement.GetProperty("mark").ValueKind);
        var checks = json.RootElement.GetProperty("checks").EnumerateArray().ToDictionary(c => c.GetProperty("name").GetString()!);
        string[] names = ["channel-loss", "reach", "dispersion-positive", "dispersion-negative", "overload"];
        foreach (var name in names) Assert.Contains(name, checks.Keys);
        string[] keys = ["value", "limit", "margin", "unit", "verdict", "citation", "mark"];
        foreach (var key in keys) Assert.True(checks["reach"].TryGetProperty(key, out _), key);
        Assert.Equal(1.8, checks["channel-loss"].GetProperty("value").GetDouble(), 1e-6);
        Assert.Equal(3.0, checks["channel-loss"].GetProperty("limit").GetDouble(), 1e-6);
        Assert.Equal(1.2, checks["channel-loss"].GetProperty("margin").GetDouble(), 1e-6);
    }

    [Fact]
    public void Candidates_HaveTheAgreedShapeBestFirst()
    {
        using var json = Json("link --rate 400G --length 2m --json");
        var candidates = json.RootElement.GetProperty("candidates").EnumerateArray().ToList();
        Assert.True(candidates.Count > 10);
        string[] keys = ["type", "verdict", "mark", "checks", "name", "price", "watts"];
        foreach (var key in keys) Assert.True(candidates[0].TryGetProperty(key, out _), key);
        var passing = candidates.TakeWhile(c => c.GetProperty("verdict").GetString() == "pass").ToList();
        Assert.True(passing.Count > 3);
        var prices = passing.Select(c => c.GetProperty("price").GetDouble()).ToList();
        Assert.Equal(prices.Order(), prices);
        Assert.DoesNotContain(candidates.Skip(passing.Count), c => c.GetProperty("verdict").GetString() == "pass");
    }

    // Source: IEEE 802.3 clauses 92, 110, 136 and 162 give copper of 1 m at each of these rates.
    [Theory]
    [InlineData("25G", "DAC")]
    [InlineData("100G", "DAC")]
    [InlineData("200G", "DAC")]
    [InlineData("400G", "DAC")]
    [InlineData("800G", "DAC")]
    [InlineData("100G", "AOC")]
    [InlineData("400G", "AEC")]
    public void Candidates_AssumeACageThatRunsTheCable(string rate, string medium)
    {
        using var json = Json($"link --rate {rate} --length 1m --medium {medium} --drafts --json");
        var candidates = json.RootElement.GetProperty("candidates").EnumerateArray().ToList();
        Assert.Equal("pass", candidates[0].GetProperty("verdict").GetString());
        Assert.Equal(candidates.Count, candidates.Select(c => c.GetProperty("name").GetString()).Distinct().Count());
        var strangers = candidates.SelectMany(c => c.GetProperty("checks").EnumerateArray())
            .Where(c => c.GetProperty("name").GetString() == "host-interface" && c.GetProperty("verdict").GetString() == "fail");
        Assert.Empty(strangers);
    }

    [Fact]
    public void Mate_HasTheAgreedShape()
    {
        using var works = Json("mate 400GBASE-DR4 100GBASE-DR --json");
        Assert.Equal("conditional", works.RootElement.GetProperty("verdict").GetString());
        var conditions = works.RootElement.GetProperty("conditions").EnumerateArray();
        Assert.Contains(conditions, c => c.GetString()!.Contains("500 m", StringComparison.Ordinal));
        using var never = Json("mate QSFP28:4x25G/QSFP-DD/400GBASE-DR4 400GBASE-DR4 --json");
        Assert.Equal("never", never.RootElement.GetProperty("verdict").GetString());
        var reason = never.RootElement.GetProperty("reasons")[0];
        Assert.Equal("LW2101", reason.GetProperty("code").GetString());
        Assert.NotEmpty(reason.GetProperty("text").GetString()!);
    }

    [Fact]
    public void RateThatNothingCarries_IsSaid() =>
        Assert.StartsWith("no way of the shipped catalogue carries 1000G over OS2",
            Program.Run("link --rate 1T --medium OS2 --length 5m").Output, StringComparison.Ordinal);

    [Fact]
    public void Why_CallsAFailingWayNearest()
    {
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        try
        {
            var plan = Path.Combine(folder, "plan.yaml");
            File.WriteAllText(plan, """
                lanewright: 1
                devices: { a: { model: fixed-32x100, count: 2 }, b: { model: fixed-32x100, count: 2 } }
                links:
                  bad: { from: a-1, to: b-1, rate: 100G, medium: [DAC, AEC], length: 12 m }
                  good: { from: a-2, to: b-2, rate: 100G, length: 2 m }
                """);
            Assert.Contains("nearest", Program.Run($"why {plan} bad").Output, StringComparison.Ordinal);
            Assert.DoesNotContain("taken", Program.Run($"why {plan} bad").Output, StringComparison.Ordinal);
            Assert.Contains("taken", Program.Run($"why {plan} good").Output, StringComparison.Ordinal);
            using var json = Json($"why {plan} bad --json");
            var choice = json.RootElement.GetProperty("classes")[0];
            Assert.Equal("", choice.GetProperty("chosen").GetString());
            Assert.Equal(choice.GetProperty("candidates")[0].GetProperty("name").GetString(), choice.GetProperty("nearest").GetString());
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Build_WritesItsDocumentsAndLeavesNothingHalfWritten()
    {
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        try
        {
            var run = Program.Run($"build examples/kestrel-bay --out {folder} --json");
            Assert.True(run.Code == 0, run.Error);
            using var json = JsonDocument.Parse(run.Output);
            foreach (var document in json.RootElement.GetProperty("documents").EnumerateArray())
                Assert.True(new FileInfo(Path.Combine(folder, document.GetString()!)).Length > 0, document.GetString());
            string[] names = ["findings.json", "parts.csv", "ports.csv", "cables.csv", "links.json", "handover.xlsx", "report.html"];
            foreach (var name in names)
                Assert.True(File.Exists(Path.Combine(folder, name)), name);
            Assert.Empty(Directory.EnumerateFiles(folder, "*.partial", SearchOption.AllDirectories));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Build_ThatCannotWriteOneDocument_LeavesTheSetBeforeItWhole()
    {
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        try
        {
            Assert.Equal(0, Program.Run($"build examples/kestrel-bay --out {folder}").Code);
            var before = Directory.GetFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(f => f, File.ReadAllBytes);
            File.Delete(Path.Combine(folder, "handover.xlsx"));
            Directory.CreateDirectory(Path.Combine(folder, "handover.xlsx"));
            Assert.Equal(2, Program.Run($"build tests/plans/starter --out {folder}").Code);
            foreach (var (file, bytes) in before.Where(b => !b.Key.EndsWith(".xlsx", StringComparison.Ordinal)))
                Assert.True(bytes.SequenceEqual(File.ReadAllBytes(file)), file);
            Directory.Delete(Path.Combine(folder, "handover.xlsx"));
            File.WriteAllText(Path.Combine(folder, "drawings", "mine.svg"), "mine");
            using var json = Json($"build tests/plans/starter --out {folder} --json");
            var written = json.RootElement.GetProperty("documents").EnumerateArray().Select(d => d.GetString()).Append("drawings/mine.svg");
            var found = Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f));
            Assert.Equal(written.Order(), found.Order());
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Why_PrintsEqualTablesOnce()
    {
        var output = Program.Run("why examples/kestrel-bay s-edge").Output;
        var tables = output.Split("lost by").Skip(1).Select(t => t[..t.LastIndexOf("     ", StringComparison.Ordinal)].Trim()).ToList();
        Assert.Equal(tables.Distinct().Count(), tables.Count);
    }

    [Fact]
    public void BuildOfAPlanThatOnlyWants_PointsToSize()
    {
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        File.WriteAllText(Path.Combine(folder, "plan.yaml"), "lanewright: 1\nwanted: { hosts: { a: { count: 8, rate: 100G } } }\n");
        var run = Program.Run($"build {folder} --out {Path.Combine(folder, "out")}");
        Assert.Contains("'lanewright size' answers what to buy", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void New_WritesAPlanThatIsCleanAndIsNeverOverwritten()
    {
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        try
        {
            var plan = Path.Combine(folder, "mine.yaml");
            Assert.Equal(0, Program.Run($"new {plan}").Code);
            Assert.Equal(0, Program.Run($"check {plan}").Code);
            File.WriteAllText(plan, "mine");
            Assert.Equal(2, Program.Run($"new {plan}").Code);
            Assert.Equal("mine", File.ReadAllText(plan));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static JsonDocument Json(string arguments)
    {
        var run = Program.Run(arguments);
        Assert.True(run.Code is 0 or 1, run.Error);
        return JsonDocument.Parse(run.Output);
    }
}
