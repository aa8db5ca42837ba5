using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Standards;

/// <summary>All tables of standards values, typed.</summary>
public sealed class StandardsLibrary
{
    private const string Folder = "data/standards/";

    private static readonly ImmutableArray<string> Tables =
    [
        "interface-types", "host-interfaces", "copper-types", "twinax", "form-factors", "fibres",
        "reflectance", "connectors", "fec", "cage-modes", "lane-signals", "practices", "polarity", "facility", "cabling",
        "macrobend", "grids", "line-fibres", "wavelength-types", "symbol-sets", "line-equipment",
    ];

    private static readonly Lazy<StandardsLibrary> ShippedOnce = new(() => Load([], new FindingSink()));

    private readonly FactTable connectors;
    private readonly FactTable fec;
    private readonly FactTable practices;
    private readonly FactTable facility;
    private readonly FactTable cabling;
    private readonly FactTable lineEquipment;
    private readonly Dictionary<string, InterfaceType> interfaceByName;
    private readonly Dictionary<string, CopperType> copperByName;
    private readonly Dictionary<string, HostInterface> hostByName;
    private readonly Dictionary<string, FormFactor> formFactorByName;
    private readonly Dictionary<string, Fibre> fibreByName;
    private readonly Dictionary<string, ReflectanceTable> reflectanceByName;
    private readonly Dictionary<string, LaneSignal> signalByName;
    private readonly Dictionary<string, ImmutableArray<CageMode>> modesByCage;

    private StandardsLibrary(IReadOnlyDictionary<string, FactTable> tables)
    {
        connectors = tables["connectors"];
        fec = tables["fec"];
        practices = tables["practices"];
        facility = tables["facility"];
        cabling = tables["cabling"];
        InterfaceTypes = [.. tables["interface-types"].Sheets.Select(s => new InterfaceType(s))];
        HostInterfaces = [.. tables["host-interfaces"].Sheets.Select(s => new HostInterface(s))];
        CopperTypes = [.. tables["copper-types"].Sheets.Select(s => new CopperType(s))];
        FormFactors = [.. tables["form-factors"].Sheets.Select(s => new FormFactor(s))];
        Fibres = [.. tables["fibres"].Sheets.Select(s => new Fibre(s))];
        interfaceByName = InterfaceTypes.ToDictionary(t => t.Name, StringComparer.Ordinal);
        copperByName = CopperTypes.ToDictionary(t => t.Name, StringComparer.Ordinal);
        hostByName = HostInterfaces.ToDictionary(t => t.Name, StringComparer.Ordinal);
        formFactorByName = FormFactors.ToDictionary(t => t.Name, StringComparer.Ordinal);
        fibreByName = Fibres.ToDictionary(t => t.Name, StringComparer.Ordinal);
        reflectanceByName = tables["reflectance"].Sheets
            .Select(s => new ReflectanceTable(s))
            .ToDictionary(t => t.Name, StringComparer.Ordinal);
        signalByName = tables["lane-signals"].Sheets.ToDictionary(
            s => s.Subject,
            s => new LaneSignal(s.Baud("baud")?.Value ?? default, LaneSignal.ReadModulation(s.Word("modulation"))),
            StringComparer.Ordinal);
        Polarity = new PolarityTable(tables["polarity"]);
        Macrobends = [.. tables["macrobend"].Sheets.Select(MacrobendLimit.Read).OfType<MacrobendLimit>()];
        TwinaxLosses = ReadTwinax(tables["twinax"]);
        EndLosses = ReadEndLosses(tables["twinax"]);
        Grades = ReadGrades(connectors);
        lineEquipment = tables["line-equipment"];
        Grid = new FrequencyGrid(tables["grids"]);
        LineFibres = [.. tables["line-fibres"].Sheets.Select(s => new LineFibre(s))];
        WavelengthTypes = [.. tables["wavelength-types"].Sheets.Select(s => new WavelengthType(s))];
        SymbolSets = [.. SymbolSet.Read(tables["symbol-sets"])];
        Amplifiers = [.. lineEquipment.Sheets.Select(AmplifierModel.Read).OfType<AmplifierModel>()];
        modesByCage = ReadCageModes(tables["cage-modes"]);
        Sheets = tables.ToImmutableSortedDictionary(t => t.Key, t => t.Value, StringComparer.Ordinal);
    }

    /// <summary>The tables as shipped.</summary>
    public static StandardsLibrary Shipped => ShippedOnce.Value;

    /// <summary>Every table, by name, for listing.</summary>
    public ImmutableSortedDictionary<string, FactTable> Sheets { get; }

    /// <summary>Optical interface types in table order.</summary>
    public ImmutableArray<InterfaceType> InterfaceTypes { get; }

    /// <summary>Electrical interfaces between silicon and module.</summary>
    public ImmutableArray<HostInterface> HostInterfaces { get; }

    /// <summary>Copper interface types.</summary>
    public ImmutableArray<CopperType> CopperTypes { get; }

    /// <summary>Modules and cages.</summary>
    public ImmutableArray<FormFactor> FormFactors { get; }

    /// <summary>Classes of fibre.</summary>
    public ImmutableArray<Fibre> Fibres { get; }

    /// <summary>Loss of twinax by gauge and frequency.</summary>
    public ImmutableArray<TwinaxLoss> TwinaxLosses { get; }

    /// <summary>Loss of one end of a copper assembly by frequency in gigahertz, in dB.</summary>
    public ImmutableArray<(double Gigahertz, Known<Decibels> Loss)> EndLosses { get; }

    /// <summary>Grades of connectors.</summary>
    public ImmutableArray<ConnectorGrade> Grades { get; }

    /// <summary>Grids of wavelengths.</summary>
    public FrequencyGrid Grid { get; }

    /// <summary>Kinds of fibre between sites.</summary>
    public ImmutableArray<LineFibre> LineFibres { get; }

    /// <summary>Interface types of one wavelength, in table order.</summary>
    public ImmutableArray<WavelengthType> WavelengthTypes { get; }

    /// <summary>Sets of symbols.</summary>
    public ImmutableArray<SymbolSet> SymbolSets { get; }

    /// <summary>Optical amplifiers.</summary>
    public ImmutableArray<AmplifierModel> Amplifiers { get; }

    /// <summary>How array cables and their kin lead fibres.</summary>
    public PolarityTable Polarity { get; }

    /// <summary>What bends cost in single-mode fibre.</summary>
    public ImmutableArray<MacrobendLimit> Macrobends { get; }

    /// <summary>Names of lane rates as catalogues use them.</summary>
    public IEnumerable<string> SignalNames => signalByName.Keys;

    /// <summary>Reads the shipped tables and then others whose rows replace theirs.</summary>
    public static StandardsLibrary Load(IEnumerable<SourceText> replacements, FindingSink findings)
    {
        var others = replacements.ToList();
        foreach (var stray in others.Where(o => !Tables.Any(t => IsFor(o, t))))
            findings.Add(NotationFindings.FileUnreadable, stray.Span(0, 0),
                "it replaces no table: the name of a file of standards values ends in "
                + string.Join(", ", Tables.Select(t => t + ".csv")));
        var tables = new Dictionary<string, FactTable>(StringComparer.Ordinal);
        foreach (var name in Tables)
        {
            var own = EmbeddedText.Read(Folder + name + ".csv");
            tables[name] = FactTable.Read([own, .. others.Where(o => IsFor(o, name))], findings);
        }
        return new StandardsLibrary(tables);
    }

    /// <summary>The module codes of SFF-8024, CMIS and their kin: read only when asked for, being long.</summary>
    public static FactTable LoadModuleCodes() => FactTable.Read([EmbeddedText.Read(Folder + "module-codes.csv")], new FindingSink());

    /// <summary>The texts that values were read in, by key.</summary>
    public static IReadOnlyDictionary<string, string> LoadDocuments() =>
        CsvTree.Read(EmbeddedText.Read(Folder + "documents.csv"), new FindingSink())
            .ToDictionary(row => row.Text("key") ?? "", row => row.Text("what") ?? "", StringComparer.Ordinal);

    /// <summary>An optical interface type by name, or null.</summary>
    public InterfaceType? Interface(string name) => interfaceByName.GetValueOrDefault(name);

    /// <summary>A copper type by name, or null.</summary>
    public CopperType? Copper(string name) => copperByName.GetValueOrDefault(name);

    /// <summary>A host interface by name, or null.</summary>
    public HostInterface? Host(string name) => hostByName.GetValueOrDefault(name);

    /// <summary>A form factor by name, or null.</summary>
    public FormFactor? FormFactor(string name) => formFactorByName.GetValueOrDefault(name);

    /// <summary>A fibre class by name, or null.</summary>
    public Fibre? Fibre(string name) => fibreByName.GetValueOrDefault(name);

    /// <summary>A rule of reflections by name, or null.</summary>
    public ReflectanceTable? Reflectance(string name) => reflectanceByName.GetValueOrDefault(name);

    /// <summary>A lane signal by its catalogue name, or null.</summary>
    public LaneSignal? Signal(string name) => signalByName.TryGetValue(name, out var signal) ? signal : null;

    /// <summary>The usual modes of a cage written <c>lanes x lane rate</c>, such as <c>8x50G</c>; empty where there is no such
    /// cage.</summary>
    public ImmutableArray<CageMode> CageModes(string lanes) => modesByCage.GetValueOrDefault(lanes, []);

    /// <summary>The cages whose modes are known.</summary>
    public IEnumerable<string> CageNames => modesByCage.Keys;

    /// <summary>A habit of the trade by subject and field.</summary>
    /// <exception cref="InvalidOperationException">There is no such row: a fault of this program or of its tables.</exception>
    public Known<double> Practice(string subject, string field) =>
        practices[subject]?.Real(field) ?? throw new InvalidOperationException($"no practice {subject} {field}");

    /// <summary>A habit of the trade, or null where there is none.</summary>
    public Known<double>? PracticeOrNull(string subject, string field) => practices[subject]?.Real(field);

    /// <summary>A value of rooms, power and air by subject and field.</summary>
    /// <exception cref="InvalidOperationException">There is no such row: a fault of this program or of its tables.</exception>
    public Known<double> Facility(string subject, string field) =>
        facility[subject]?.Real(field) ?? throw new InvalidOperationException($"no facility row {subject} {field}");

    /// <summary>A limit or practice of structured cabling by subject and field; null where no edition read gives one.</summary>
    public Known<double>? Cabling(string subject, string field) => cabling[subject]?.Real(field);

    /// <summary>The editions of the cabling standard whose test limits are known, in table order.</summary>
    public IEnumerable<string> CablingEditions => cabling.Sheets.Select(s => s.Subject)
        .Where(s => s.StartsWith("edition-", StringComparison.Ordinal))
        .Select(s => s["edition-".Length..]);

    /// <summary>A value of the equipment and practice of lines by subject and field.</summary>
    /// <exception cref="InvalidOperationException">There is no such row: a fault of this program or of its tables.</exception>
    public Known<double> LineValue(string subject, string field) =>
        lineEquipment[subject]?.Real(field) ?? throw new InvalidOperationException($"no row of line equipment {subject} {field}");

    /// <summary>How far apart channels are put where nobody says: as a type has to be, and otherwise by the usual grid or the next wider
    /// slot that holds a spectrum of the rate.</summary>
    /// <param name="type">The type; null when any of the rate will do.</param>
    /// <param name="rate">The rate.</param>
    public SpacingChoice UsualSpacing(WavelengthType? type, BitRate rate)
    {
        if (type?.SpacingMin is { } least) return new SpacingChoice(least.Value, $"none is stated: the least of {type.Name}");
        var slots = type is not null
            ? [type.SlotOn(Grid)]
            : WavelengthTypes.Where(t => t.IsCoherent && t.Rate == rate).Select(t => t.SlotOn(Grid));
        var narrowest = slots.OfType<Frequency>().DefaultIfEmpty(FrequencyGrid.UsualSpacing).MinBy(s => s.Hertz);
        return narrowest > FrequencyGrid.UsualSpacing
            ? new SpacingChoice(narrowest, $"none is stated: the narrowest slot for {type?.Name ?? $"a spectrum of {rate}"}")
            : new SpacingChoice(FrequencyGrid.UsualSpacing, "none is stated: the usual grid");
    }

    /// <summary>A kind of fibre between sites by name, or null.</summary>
    public LineFibre? LineFibre(string name) => LineFibres.FirstOrDefault(f => f.Name == name);

    /// <summary>A type of one wavelength by name, or null.</summary>
    public WavelengthType? Wavelength(string name) => WavelengthTypes.FirstOrDefault(t => t.Name == name);

    /// <summary>A set of symbols by name, or null.</summary>
    public SymbolSet? Symbols(string name) => SymbolSets.FirstOrDefault(s => s.Name == name);

    /// <summary>An amplifier by name, or null.</summary>
    public AmplifierModel? Amplifier(string name) => Amplifiers.FirstOrDefault(a => a.Name == name);

    /// <summary>The environmental classes of equipment that have rows.</summary>
    public IEnumerable<string> AirClasses => facility.Sheets.Where(s => s["allowable-high"] is not null).Select(s => s.Subject);

    /// <summary>The rows of a connector, polish or grade, or null.</summary>
    public FactSheet? Connector(string name) => connectors[name];

    /// <summary>The rows of an error-correcting code, or null.</summary>
    public FactSheet? Fec(string name) => fec[name];

    /// <summary>A grade of connectors by its letter, or null.</summary>
    public ConnectorGrade? Grade(string name) => Grades.FirstOrDefault(g => g.Name == name);

    /// <summary>A replacement belongs to the table whose name its file name ends in, so <c>my-fibres.csv</c> replaces fibres.</summary>
    private static bool IsFor(SourceText replacement, string table) =>
        replacement.Path.EndsWith(table + ".csv", StringComparison.Ordinal);

    private static ImmutableArray<TwinaxLoss> ReadTwinax(FactTable table) =>
        [.. from sheet in table.Sheets
            let frequency = sheet.Real("frequency")
            let loss = sheet.Real("loss-max")
            where sheet["awg"] is not null && frequency is not null && loss is not null
            select new TwinaxLoss(sheet.Whole("awg"), frequency.Value.Value, loss.Value)];

    private static ImmutableArray<(double, Known<Decibels>)> ReadEndLosses(FactTable table) =>
        [.. from sheet in table.Sheets
            let frequency = sheet.Real("frequency")
            let loss = sheet.Decibels("end-loss")
            where frequency is not null && loss is not null
            orderby frequency.Value.Value
            select (frequency.Value.Value, loss.Value)];

    private static ImmutableArray<ConnectorGrade> ReadGrades(FactTable table) =>
        [.. from sheet in table.Sheets
            let mean = sheet.Decibels("loss-mean")
            let tail = sheet.Decibels("loss-97")
            where mean is not null && tail is not null
            select new ConnectorGrade(sheet.Subject.Replace("grade-", "", StringComparison.Ordinal), mean.Value, tail.Value)];

    private Dictionary<string, ImmutableArray<CageMode>> ReadCageModes(FactTable table)
    {
        var modes = new Dictionary<string, ImmutableArray<CageMode>>(StringComparer.Ordinal);
        foreach (var sheet in table.Sheets)
        {
            var parts = sheet.Subject.Split('/');
            var shape = parts[^1].Split('x', '-');
            if (parts.Length != 2 || shape.Length < 2) continue;
            if (!Numerals.TryWhole(shape[0], out var ways) || !UnitText.TryRead(shape[1], UnitText.Rates, out var rate)) continue;
            if (Signal(sheet.Word("signal")) is not { } signal) continue;
            var mode = new CageMode((int)ways, BitRate.FromGigabits(rate), sheet.Whole("lanes-per-port", 1), signal,
                sheet.Word("possible") != "no", sheet.Word("condition"), sheet.SourceOf("possible"));
            modes[parts[0]] = modes.GetValueOrDefault(parts[0], []).Add(mode);
        }
        return modes;
    }
}
