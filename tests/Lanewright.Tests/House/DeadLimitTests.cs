using System.Text.RegularExpressions;
using Lanewright.Findings;
using Lanewright.Notation;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Tests.House;

/// <summary>Every field of the standards tables is read by code that judges, or is named here as one that is only shown. A limit nobody
/// holds anything against would look like a proof.</summary>
public sealed partial class DeadLimitTests
{
    /// <summary>Fields that are shown and not judged by, each with its reason. A field leaves this list when code reads it.</summary>
    private static readonly Dictionary<(string Table, string Field), string> Shown = new()
    {
        [("interface-types", "kind")] = "who made the type",
        [("interface-types", "note")] = "a remark",
        [("interface-types", "lane-rate")] = "follows from rate and lanes",
        [("interface-types", "pre-fec-ber-max")] = "held against what is measured, not against a plan",
        [("interface-types", "connection-loss")] = "a part of the channel loss, which is judged as a whole",
        [("interface-types", "connection-loss-om4")] = "a part of the channel loss, which is judged as a whole",
        [("interface-types", "connector-alternative")] = "modules of the catalogue say what they show",
        [("interface-types", "power-budget")] = "loss and penalties together; tested as an identity",
        [("interface-types", "additional-loss")] = "what the budget leaves; tested as an identity",
        [("interface-types", "additional-loss-engineered")] = "what the budget leaves; tested as an identity",
        [("interface-types", "additional-loss-om3")] = "what the budget leaves",
        [("interface-types", "additional-loss-om4")] = "what the budget leaves; tested as an identity",
        [("interface-types", "loss-min")] = "the overload of the type as a loss; tested below",
        [("interface-types", "tx-average-min")] = "informative; drawn, and tested as an identity",
        [("interface-types", "rx-average-min")] = "informative; held against what is measured",
        [("interface-types", "tx-oma-min")] = "launch less penalty is the stricter floor and is judged",
        [("interface-types", "tx-oma-min-rule")] = "how that floor follows from the penalty",
        [("interface-types", "tx-oma-minus-penalty-min-low-er")] = "a higher floor for weak extinction; the lower one is the worse case",
        [("interface-types", "tx-penalty-metric")] = "how the penalty is measured",
        [("interface-types", "tx-return-loss-tolerance")] = "a property of the transmitter; of the channel its own return loss is judged",
        [("interface-types", "tx-total-average-max")] = "all lanes together; each lane is judged",
        [("interface-types", "rx-sensitivity-rule")] = "how the sensitivity follows from the signal; tested as an identity",
        [("interface-types", "breakout-partners")] = "tested below against what two ends come to",
        [("interface-types", "breakout-note")] = "a remark",
        [("host-interfaces", "loss-max")] = "a recommendation to board designers",
        [("host-interfaces", "loss-at")] = "the frequency of that recommendation",
        [("host-interfaces", "training")] = "none of them has any",
        [("copper-types", "loss-at")] = "half the symbol rate; tested below",
        [("twinax", "loss-min")] = "a proof takes the upper value",
        [("form-factors", "rate-max")] = "follows from lanes and their rate",
        [("form-factors", "width")] = "outline",
        [("form-factors", "height")] = "outline",
        [("form-factors", "length")] = "outline",
        [("form-factors", "top")] = "the bodies with other tops are rows of their own, and what goes into what is judged",
        [("form-factors", "management")] = "which memory map a host reads",
        [("form-factors", "case-temperature-max")] = "held against what is measured",
        [("fibres", "modal-bandwidth-850")] = "contained in the reach of each type",
        [("fibres", "modal-bandwidth-953")] = "contained in the reach of each type",
        [("fibres", "overfilled-bandwidth-850")] = "contained in the reach of each type",
        [("fibres", "overfilled-bandwidth-1300")] = "contained in the reach of each type",
        [("fibres", "attenuation-953-reported")] = "sources disagree; the wider window is judged by",
        [("connectors", "positions")] = "drawn",
        [("connectors", "module-code")] = "what a module reports when it is plugged",
        [("connectors", "family")] = "drawn",
        [("connectors", "loss-max")] = "component limits; a plan states its own losses",
        [("fec", "inner-n")] = "size of the code",
        [("fec", "inner-k")] = "size of the code",
        [("fec", "kind")] = "kind of the code",
        [("line-fibres", "dispersion-low")] = "a lower bound; noise is reckoned with the usual value",
        [("practices", "repeated")] = "cables of a plan are bent once",
        [("practices", "ageing")] = "nothing is kept back unless a plan says so",
    };

    /// <summary>The typed rows of each table; comparisons anywhere in Engineering and defaults of plans may read fields as well.</summary>
    private static readonly Dictionary<string, string[]> Readers = new()
    {
        ["interface-types"] = ["Standards/InterfaceType.cs", "Engineering/Links/MediaMatch.cs"],
        ["host-interfaces"] = ["Standards/HostInterface.cs"],
        ["copper-types"] = ["Standards/CopperType.cs", "Engineering/Copper/CopperChecks.cs"],
        ["twinax"] = ["Standards/StandardsLibrary.cs"],
        ["form-factors"] = ["Standards/FormFactor.cs"],
        ["fibres"] = ["Standards/Fibre.cs", "Engineering/Links/FibreDispersion.cs", "Engineering/Links/FibreLinkChecks.cs",
            "Engineering/Links/ChannelLoss.cs"],
        ["reflectance"] = ["Standards/ReflectanceTable.cs"],
        ["connectors"] = ["Engineering/Links/ReflectionChecks.cs", "Engineering/Choice/CordMatch.cs", "Engineering/Choice/FibreJudge.cs"],
        ["fec"] = ["Engineering/Links/LinkLatency.cs", "Engineering/Links/ReedSolomonCode.cs", "Engineering/Links/CodeAnswer.cs"],
        ["cage-modes"] = ["Standards/StandardsLibrary.cs"],
        ["lane-signals"] = ["Standards/StandardsLibrary.cs"],
        ["practices"] = [],
        ["polarity"] = ["Standards/PolarityTable.cs"],
        ["facility"] = [],
        ["macrobend"] = ["Standards/MacrobendLimit.cs"],
        ["cabling"] = ["Engineering/Plant/TestLimit.cs"],
        ["grids"] = ["Standards/FrequencyGrid.cs"],
        ["line-fibres"] = ["Standards/LineFibre.cs"],
        ["wavelength-types"] = ["Standards/WavelengthType.cs"],
        ["symbol-sets"] = ["Standards/SymbolSet.cs"],
        ["line-equipment"] = ["Standards/AmplifierModel.cs"],
    };

    public static TheoryData<string> Tables => new(Readers.Keys);

    [Theory]
    [MemberData(nameof(Tables))]
    public void Field_IsReadOrShownOnPurpose(string table)
    {
        var text = string.Concat(Readers[table].Select(f => File.ReadAllText(Repository.Path(["src", "Lanewright", .. f.Split('/')]))));
        // Habits of the trade are asked for by name, wherever they are needed.
        if (table == "practices")
            text = string.Concat(LibrarySources().SelectMany(File.ReadLines).Where(l => l.Contains("Practice", StringComparison.Ordinal)));
        if (table == "facility")
            text = string.Concat(LibrarySources().SelectMany(File.ReadLines).Where(l => l.Contains("Facility", StringComparison.Ordinal)
                || l.Contains("Sheets.Where", StringComparison.Ordinal)));
        if (table == "cabling")
            text += string.Concat(LibrarySources().SelectMany(File.ReadLines).Where(l => l.Contains("Cabling(", StringComparison.Ordinal)));
        if (table == "line-equipment")
            text += string.Concat(LibrarySources().SelectMany(File.ReadLines)
                .Where(l => l.Contains("LineValue", StringComparison.Ordinal)));
        // The grades of connectors are typed rows of the library itself.
        if (table == "connectors") text += "\"loss-mean\" \"loss-97\"";
        var rows = CsvTree.Read(EmbeddedText.Read($"data/standards/{table}.csv"), new FindingSink());
        var fields = rows.Select(r => r.Text("field")!).Distinct().ToList();
        var unread = fields.Where(f => !text.Contains($"\"{Stem(f)}\"", StringComparison.Ordinal)).ToList();
        var listed = Shown.Keys.Where(k => k.Table == table).Select(k => k.Field).ToList();
        Assert.Empty(unread.Except(listed));
        Assert.Equal(listed.Where(f => unread.Contains(f) || IsDrawn(table, f)), listed);
    }

    private static IEnumerable<string> LibrarySources() =>
        Directory.EnumerateFiles(Repository.Path("src", "Lanewright"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains("/obj/", StringComparison.Ordinal));

    // What is drawn but not judged by has a property all the same.
    private static bool IsDrawn(string table, string field) => (table, field) == ("interface-types", "tx-average-min");

    // Source: the identity between the levels of a type (derived): attenuation needed is highest launch less highest received power.
    [Fact]
    public void OverloadAttenuation_IsLaunchLessOverload()
    {
        var counted = 0;
        foreach (var type in StandardsLibrary.Shipped.InterfaceTypes)
        {
            if (type.TxAverageMax is not { } launch || type.RxAverageMax is not { } most) continue;
            if (type.Sheet.Real("overload-attenuation") is not { } stated) continue;
            counted++;
            Assert.Equal(Math.Max(0, (launch.Value - most.Value).Value), stated.Value, 1e-9);
            if (type.Sheet.Real("loss-min") is { } least) Assert.Equal(least.Value, stated.Value, 1e-9);
        }
        Assert.True(counted > 30, $"{counted}");
    }

    [Fact]
    public void CopperLoss_IsTabledAtHalfTheSymbolRate()
    {
        foreach (var type in StandardsLibrary.Shipped.CopperTypes)
            if (type.Sheet.Real("loss-at") is { } at) Assert.Equal(type.Signal.Baud.NyquistGigahertz, at.Value, 0.01);
    }

    /// <summary>A field whose name carries a number is read by what stands before it.</summary>
    private static string Stem(string field)
    {
        var at = field.IndexOf('@', StringComparison.Ordinal);
        if (at >= 0) return field[..(at + 1)];
        var numbered = Numbered().Match(field);
        return numbered.Success ? numbered.Groups[1].Value : field.EndsWith("G-radius", StringComparison.Ordinal) ? "radius" : field;
    }

    [GeneratedRegex("^(reach-|loss-max-|penalties-|power-class-|attenuation-)(om3|om4|om5|os2|[0-9]|[C-E]|maxima)$")]
    private static partial Regex Numbered();
}
