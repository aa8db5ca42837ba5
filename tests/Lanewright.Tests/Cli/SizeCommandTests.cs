using System.Text.Json;

namespace Lanewright.Tests.Cli;

/// <summary>The command <c>size</c> as its callers see it.</summary>
public sealed class SizeCommandTests
{
    // Small enough that the whole catalogue is searched in a moment.
    private const string Question = "--hosts 40 --host-rate 100G --host-ports 2 --tiers 1";

    [Theory]
    [InlineData("--radix 48 --tiers 3", "hosts=27648 edge=1152 aggregation=1152 cores=576")] // Al-Fares et al. 2008, as case S01
    [InlineData("--radix 40 --tiers 2", "hosts=800 switches=60")] // n^2/2 rule, as case S07
    [InlineData("--radix 64 --tiers 2 --oversubscription 3:1", "hosts=3072 leaves=64 spines=16")]
    [InlineData("--radix 64 --tiers 3 --oversubscription 3:1,1:1", "hosts=98304 edge=2048 aggregation=1024 cores=512")] // case S23
    [InlineData("--radix 64 --tiers 4", "hosts=2097152 switches=229376")] // case S14
    [InlineData("--radix 32 --breakout 4x100G --tiers 2", "hosts=8192 leaves=128 spines=64")]
    [InlineData("--radix 128 --breakout 4 --port-limit 256 --tiers 2", "hosts=32768 switches=384")] // case S12
    [InlineData("--radix 128 --planes 4 --hosts 2048", "leavesPerPlane=32 spinesPerPlane=16 switches=192 fabricLinks=8192")] // S52
    [InlineData("--radix 64 --rails 8", "accelerators=2048 units=8 leaves=64 spines=32")] // case S49
    [InlineData("--radix 64 --rails 8 --tiers 1", "accelerators=512 switches=8 spines=0")] // case S51
    // Switches for N hosts in three tiers: 5N/k (fat-tree counting, derived); 8,192 at k = 64 are 8 pods of 32 and 32, and 128 cores.
    [InlineData("--radix 64 --tiers 3 --hosts 8192", "hosts=8192 switches=640 edge=256 aggregation=256 cores=128 pods=8 fabricLinks=16384")]
    [InlineData("--radix 64 --tiers 3 --hosts 65536", "switches=5120 cores=1024 pods=64")] // the whole of it
    [InlineData("--radix 64 --tiers 3 --hosts 8193", "pods=9 edge=288 cores=256")] // 4 links of 32 to a core, where 9 pods leave room for 7
    [InlineData("--radix 8 --tiers 4 --hosts 64", "pods=1 switches=64")] // 16 + 16 + 16, and 16 above for 64 links, 4 of each group of 4
    [InlineData("--radix 64 --tiers 1 --hosts 60", "hosts=60 switches=1")]
    [InlineData("--radix 64 --hosts 1000 --oversubscription 3:1", "leaves=21 spines=8 parallel=2 fabricLinks=336")] // case S21
    public void Radix_IsCountedWithoutACatalogue(string flags, string expected)
    {
        using var json = Json(0, "size " + flags + " --json");
        foreach (var figure in expected.Split(' '))
        {
            var parts = figure.Split('=');
            Assert.Equal($"{parts[0]} {parts[1]}", $"{parts[0]} {json.RootElement.GetProperty(parts[0]).GetInt64()}");
        }
    }

    [Theory]
    [InlineData("size")]
    [InlineData("size --hosts 10")]
    [InlineData("size --hosts ten --host-rate 100G")]
    [InlineData("size --hosts 10 --host-rate 100")]
    [InlineData("size --hosts 10 --host-rate 100G --shape spineleaf")]
    [InlineData("size --hosts 10 --host-rate 100G --oversubscription 3:0")]
    [InlineData("size --hosts 10 --host-rate 100G --write 1")]
    [InlineData("size --hosts 10 --host-rate 100G --breakout 4")]
    [InlineData("size --hosts 10 --host-rate 100G --catalogue no-such-file.yaml")]
    [InlineData("size --radix 1")]
    [InlineData("size --radix 64 --tiers 1 --hosts 100")]
    [InlineData("size --radix 64 --tiers 3 --hosts 100000")]
    [InlineData("size --radix 64 --tiers 4 --hosts 9999999")]
    [InlineData("size --radix 48 --growth 5%")]
    [InlineData("size --radix 48 --breakout 5000")]
    [InlineData("size --radix 1048576 --tiers 8")]
    [InlineData("size --radix 48 --planes 4")]
    [InlineData("size --radix 48 --planes 4 --hosts 100000000")]
    [InlineData("size examples/kestrel-bay --radix 48")]
    [InlineData("size no-such-plan.yaml")]
    public void CannotRunWithTwoAndSaysWhy(string arguments)
    {
        var run = Program.Run(arguments);
        Assert.Equal(2, run.Code);
        Assert.NotEmpty(run.Error);
        Assert.DoesNotContain("   at ", run.Error + run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Options_HaveTheAgreedShapeBestFirst()
    {
        using var json = Json(0, $"size {Question} --json");
        string[] keys =
        [
            "shape", "tiers", "leaves", "spines", "cores", "hosts", "hostPorts", "fabricLinks", "modules", "cables", "price",
            "priceOverYears", "watts", "rackUnits", "lowerBound", "gap", "switches", "uplinkRate", "breakout", "portsUsed", "portsFree",
            "modulesByModel", "cablesByModel", "growthLeft", "nextLaneRate",
        ];
        var options = json.RootElement.GetProperty("options").EnumerateArray().ToList();
        Assert.True(options.Count >= 2);
        foreach (var key in keys) Assert.All(options, o => Assert.True(o.TryGetProperty(key, out _), key));
        var prices = options.Select(o => o.GetProperty("priceOverYears").GetDecimal()).ToList();
        Assert.Equal(prices.Order(), prices);
        Assert.All(options, o => Assert.True(o.GetProperty("lowerBound").GetDecimal() <= o.GetProperty("priceOverYears").GetDecimal()));
        Assert.All(options, o => Assert.Equal((40, 80), (o.GetProperty("hosts").GetInt32(), o.GetProperty("hostPorts").GetInt32())));
        Assert.All(options[0].GetProperty("switches").EnumerateArray(), s => Assert.True(s.GetProperty("count").GetInt32() > 0));
        Assert.Empty(json.RootElement.GetProperty("conflicts").EnumerateArray());
        Assert.Empty(json.RootElement.GetProperty("relaxations").EnumerateArray());
        Assert.True(json.RootElement.TryGetProperty("lost", out _));
    }

    [Fact]
    public void NothingFits_AnswersOneWithConflictsAndRelaxations()
    {
        using var json = Json(1, $"size {Question} --budget 1000 --json");
        Assert.Empty(json.RootElement.GetProperty("options").EnumerateArray());
        var conflicts = json.RootElement.GetProperty("conflicts").EnumerateArray()
            .Select(c => string.Join(' ', c.EnumerateArray().Select(w => w.GetString()))).ToList();
        Assert.Contains(conflicts, c => c.Contains("budget", StringComparison.Ordinal));
        var relaxations = json.RootElement.GetProperty("relaxations").EnumerateArray();
        var budget = relaxations.Single(r => r.GetProperty("wish").GetString() == "budget");
        Assert.NotNull(budget.GetProperty("possible").GetString());
    }

    [Fact]
    public void WrittenOption_PassesCheckAndIsBuilt()
    {
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        try
        {
            var plan = Path.Combine(folder, "fabric.yaml");
            using var json = Json(0, $"size {Question} --write 1 --out {plan} --json");
            Assert.Equal(0, Program.Run($"check {plan}").Code);
            using var built = Json(0, $"build {plan} --out {folder} --json");
            Assert.Equal(json.RootElement.GetProperty("options")[0].GetProperty("price").GetDecimal(),
                built.RootElement.GetProperty("price").GetDecimal());
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Folder_GetsTheSheetTheChartsAndAPlanOfEachOption()
    {
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        try
        {
            using var json = Json(0, $"size {Question} --shape one-box --out {folder} --json");
            string[] names =
            [
                "option-sheet.svg", "options.json", "option-one-box.yaml", "break-even-module-price.svg", "break-even-energy-price.svg",
                "break-even-growth.svg", "break-even-oversubscription.svg", "break-even-hosts.svg",
            ];
            var written = Directory.GetFiles(folder).Select(Path.GetFileName);
            Assert.Equal(names.Order(StringComparer.Ordinal), written.Order(StringComparer.Ordinal));
            Assert.Equal(5, json.RootElement.GetProperty("breakEvens").GetArrayLength());
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void WishThatNothingMeets_IsToldInWords()
    {
        var run = Program.Run("size --hosts 40 --host-rate 37G");
        Assert.Equal(1, run.Code);
        Assert.Contains("not to be had: host-rate 37G", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("together: \n", run.Output, StringComparison.Ordinal);
    }

    /// <summary>What is said of hosts may be in the way by itself, together, or beside other wishes; asked again with what is told,
    /// something is found.</summary>
    [Theory]
    [InlineData("--hosts 40 --host-rate 37G", "--host-rate", "host-rate")]
    [InlineData("--hosts 40 --host-rate 2000G", "--host-rate", "host-rate")]
    [InlineData("--hosts 40 --host-rate 100G --per-rack 60", "--per-rack", "per-rack")]
    [InlineData("--hosts 40 --host-rate 100G --host-ports 9", "--host-ports", "host-ports per-rack")]
    [InlineData("--hosts 40 --host-rate 100G --host-ports 9", "--per-rack", "host-ports per-rack")]
    [InlineData("--hosts 40 --host-rate 37G --rack-power 1W", "", "host-rate", "rack-power")]
    public void HostThatCannotBe_IsNamedWithTheNearest(string flags, string flag, params string[] sets)
    {
        using var json = Json(1, $"size {flags} --json");
        Assert.Equal(sets, json.RootElement.GetProperty("conflicts").EnumerateArray()
            .Select(c => string.Join(' ', c.EnumerateArray().Select(w => w.GetString()))).Order());
        var possible = json.RootElement.GetProperty("relaxations").EnumerateArray()
            .Where(r => "--" + r.GetProperty("wish").GetString() == flag).Select(r => r.GetProperty("possible").GetString()).ToList();
        if (flag.Length == 0) return;
        var asked = $"size {flags} {flag} {Assert.Single(possible)} --json";
        using var again = Json(0, asked.Replace(Stated(flags, flag), "", StringComparison.Ordinal));
        Assert.NotEmpty(again.RootElement.GetProperty("options").EnumerateArray());
    }

    /// <summary>The first writing of a flag with its value; empty where it is not stated.</summary>
    private static string Stated(string flags, string flag)
    {
        var words = flags.Split(' ');
        var at = Array.IndexOf(words, flag);
        return at < 0 ? " --none-stated" : $"{flag} {words[at + 1]} ";
    }

    /// <summary>A third tier that costs, draws and takes more and grows less than two do loses, unless it is asked for by name.</summary>
    [Fact]
    public void ShapeThatAnotherBeatsInEverything_LosesWithTheReason()
    {
        const string flags = "size --hosts 3000 --host-rate 400G --oversubscription 1:1";
        using var json = Json(0, $"{flags} --json");
        Assert.DoesNotContain("three-tier", Shapes(json));
        var lost = json.RootElement.GetProperty("lost").EnumerateArray().Single(l => l.GetProperty("shape").GetString() == "three-tier");
        Assert.StartsWith(
            "leaf-spine beats the cheapest of it in everything", lost.GetProperty("reason").GetString(), StringComparison.Ordinal);
        using var named = Json(0, $"{flags} --shape leaf-spine,three-tier --json");
        Assert.Contains("three-tier", Shapes(named));
        var (two, three) = (named.RootElement.GetProperty("options")[0], named.RootElement.GetProperty("options")[1]);
        Assert.Equal(three.GetProperty("lowerBound").GetDecimal(), lost.GetProperty("bound").GetDecimal());
        foreach (var less in new[] { "price", "priceOverYears", "watts", "rackUnits" })
            Assert.True(two.GetProperty(less).GetDecimal() <= three.GetProperty(less).GetDecimal(), less);
    }

    private static IEnumerable<string?> Shapes(JsonDocument json) =>
        json.RootElement.GetProperty("options").EnumerateArray().Select(o => o.GetProperty("shape").GetString());

    /// <summary>Fewer things beside are less of a relaxation than cheaper ones.</summary>
    [Fact]
    public void FormFactorsToAllow_AreTheFewest()
    {
        const string flags = "size --hosts 300 --host-rate 100G --oversubscription 1:1 --rack-units 40";
        using var json = Json(1, $"{flags} --form-factor SFP --json");
        var relaxation = json.RootElement.GetProperty("relaxations").EnumerateArray()
            .Single(r => r.GetProperty("wish").GetString() == "form-factors");
        var beside = relaxation.GetProperty("allowBeside").EnumerateArray().Select(b => b.GetString()).ToList();
        using var asked = Json(0, $"{flags} --form-factor SFP,{string.Join(',', beside)} --json");
        Assert.NotEmpty(Shapes(asked));
        Assert.Single(beside);
    }

    /// <summary>Questions whose search is broken off where another, looser one tells what is possible, and one that only a design
    /// spread over more racks than it needs keeps.</summary>
    [Theory]
    [InlineData("--hosts 150 --host-rate 200G --oversubscription 1:1 --uplink-rate 40G", "rack-power", "300W", "W")]
    [InlineData("--hosts 400 --host-rate 50G --tiers 2 --survive 2 --growth 10% --years 3", "budget", "50000", "")]
    public void ToldLimit_IsFoundWhenItIsAskedFor(string flags, string wish, string limit, string unit)
    {
        using var json = Json(1, $"size {flags} --{wish} {limit} --json");
        var told = json.RootElement.GetProperty("relaxations").EnumerateArray()
            .Single(r => r.GetProperty("wish").GetString() == wish).GetProperty("possibleValue").GetRawText();
        using var again = Json(0, $"size {flags} --{wish} {told}{unit} --json");
        Assert.NotEmpty(again.RootElement.GetProperty("options").EnumerateArray());
    }

    /// <summary>Designs of which one switch alone is too hot for a rack do not use up the search: that nothing fits is proven, and a watt
    /// more does.</summary>
    [Fact]
    public void RackPowerOneWattTooLow_IsProvenToBeInTheWay()
    {
        using var json = Json(1, "size --hosts 64 --host-rate 100G --rack-power 411W --json");
        var conflicts = json.RootElement.GetProperty("conflicts").EnumerateArray()
            .Select(c => string.Join(' ', c.EnumerateArray().Select(w => w.GetString()))).ToList();
        Assert.Contains("hosts oversubscription rack-power", conflicts);
        Assert.True(json.RootElement.GetProperty("areConflictsProven").GetBoolean());
        using var more = Json(0, "size --hosts 64 --host-rate 100G --rack-power 412W --json");
        Assert.NotEmpty(more.RootElement.GetProperty("options").EnumerateArray());
    }

    [Theory]
    [InlineData("2.6:1", "13:5")]
    [InlineData("2.624:1", "328:125")]
    [InlineData("1.5", "3:2")]
    [InlineData("5:2", "5:2")]
    public void Ratio_MayHaveDecimals(string written, string whole)
    {
        Assert.True(Lanewright.Model.Wanted.Ratio.TryRead(written, out var ratio));
        Assert.Equal(whole, ratio.ToString());
    }

    [Theory]
    [InlineData("2.6001:1")]
    [InlineData("2.:1")]
    [InlineData(".5:1")]
    [InlineData("0.0:1")]
    [InlineData("2,6:1")]
    [InlineData("2.6.1:1")]
    public void Ratio_WithOtherDecimals_IsRefused(string written) => Assert.False(Lanewright.Model.Wanted.Ratio.TryRead(written, out _));

    /// <summary>A search so long is not repeated for charts that nobody asked for.</summary>
    [Fact]
    public void Folder_OfALongSearch_SaysThatChartsAreLeftOut()
    {
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        try
        {
            var run = Program.Run(
                $"size --hosts 600 --host-rate 100G --host-ports 2 --oversubscription 3:1 --growth 20% --shape leaf-spine --out {folder}");
            Assert.Equal(0, run.Code);
            Assert.Contains("left out: what would change the answer", run.Output, StringComparison.Ordinal);
            Assert.Empty(Directory.GetFiles(folder, "break-even-*"));
            Assert.NotEmpty(Directory.GetFiles(folder, "option-*.yaml"));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static JsonDocument Json(int code, string arguments)
    {
        var run = Program.Run(arguments);
        Assert.True(run.Code == code, run.Error + run.Output);
        return JsonDocument.Parse(run.Output);
    }
}
