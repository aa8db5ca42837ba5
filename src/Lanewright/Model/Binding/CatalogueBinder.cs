using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Turns catalogue trees into items. A faulty item is left out, the rest are kept.</summary>
public sealed class CatalogueBinder
{
    private static readonly Lazy<Catalogue> ShippedOnce = new(() => ReadShipped(StandardsLibrary.Shipped, new FindingSink()));

    private readonly StandardsLibrary standards;
    private readonly FindingSink findings;
    private readonly Mark priceMark;
    private readonly DeviceItemBinder devices;
    private readonly List<string> faulty = [];

    /// <summary>Binds against standards; prices get the given mark.</summary>
    public CatalogueBinder(StandardsLibrary standards, Mark priceMark, FindingSink findings)
    {
        this.standards = standards;
        this.findings = findings;
        this.priceMark = priceMark;
        devices = new DeviceItemBinder(standards, priceMark, findings);
    }

    /// <summary>Names of items that are described and could not be made.</summary>
    public IReadOnlyList<string> Faulty => faulty;

    /// <summary>The catalogue that comes with the program.</summary>
    public static Catalogue Shipped => ShippedOnce.Value;

    /// <summary>The shipped catalogue under standards of a plan's own: modules and cables then have the values of those.</summary>
    public static Catalogue ShippedUnder(StandardsLibrary standards, FindingSink findings) =>
        ReferenceEquals(standards, StandardsLibrary.Shipped) ? Shipped : ReadShipped(standards, findings);

    /// <summary>Reads one file, YAML or CSV by its name.</summary>
    public IEnumerable<ICatalogueItem> Read(SourceText source) =>
        source.Path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) ? ReadTable(source) : ReadTree(source);

    /// <summary>Binds a tree that has been checked against <see cref="CatalogueLanguage.File"/>.</summary>
    public IEnumerable<ICatalogueItem> Bind(MapNode root)
    {
        var items = new List<ICatalogueItem>();
        foreach (var (name, map) in Named(root, "devices")) Keep(items, name, map, devices.Device(name, map));
        foreach (var (name, map) in Named(root, "cards")) Keep(items, name, map, devices.Card(name, map));
        foreach (var (kind, section) in SectionOfKind)
            foreach (var (name, map) in Named(root, section)) Keep(items, name, map, Item(kind, name, map));
        return items;
    }

    private void Keep(List<ICatalogueItem> items, string name, MapNode map, ICatalogueItem? item)
    {
        if (item is null || findings.HasErrorIn(map.Span)) faulty.Add(name);
        else items.Add(item);
    }

    private static ImmutableArray<(string Kind, string Section)> SectionOfKind { get; } =
        [("module", "modules"), ("assembly", "assemblies"), ("cord", "cords"), ("sundry", "sundries")];

    private static Catalogue ReadShipped(StandardsLibrary standards, FindingSink findings)
    {
        var binder = new CatalogueBinder(standards, Mark.Invented, findings);
        return new Catalogue(EmbeddedText.Names("data/catalogue/").SelectMany(name => binder.Read(EmbeddedText.Read(name))));
    }

    private IEnumerable<ICatalogueItem> ReadTree(SourceText source)
    {
        if (YamlTree.Read(source, findings) is not { } root) return [];
        return ShapeCheck.CheckFile(root, CatalogueLanguage.File, findings) is { } map ? Bind(map) : [];
    }

    private List<ICatalogueItem> ReadTable(SourceText source)
    {
        var items = new List<ICatalogueItem>();
        foreach (var row in CsvTree.Read(source, findings))
        {
            var (kind, shape) = CatalogueLanguage.Tables.FirstOrDefault(t => row.Entries.Length > 0 && t.Kind == row.Entries[0].Key.Value);
            if (shape is null)
            {
                findings.Add(ModelFindings.CatalogueFault, row.Span,
                    "the first column of a catalogue table is named module, assembly, cord or sundry and holds the model name");
                return items;
            }
            var before = findings.ErrorCount;
            var rest = row with { Entries = row.Entries[1..] };
            ShapeCheck.Check(rest, shape, findings);
            if (row.Text(kind) is not { } name) continue;
            var item = findings.ErrorCount > before ? null : Item(kind, name, rest);
            if (item is null || findings.ErrorCount > before) faulty.Add(name);
            else items.Add(item);
        }
        return items;
    }

    private ICatalogueItem? Item(string kind, string name, MapNode map) => kind switch
    {
        "module" => Module(name, map),
        "assembly" => Assembly(name, map),
        "cord" => Cord(name, map),
        _ => Sundry(name, map),
    };

    private ModuleModel? Module(string name, MapNode map)
    {
        if (FormFactorOf(map, "form-factor") is not { } formFactor) return null;
        var applications = ImmutableArray.CreateBuilder<Application>();
        const StringSplitOptions tidy = StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries;
        foreach (var text in (map.Text("applications") ?? "").Split(';', tidy))
            if (ReadApplication(text, map) is { } application) applications.Add(application);
        if (applications.Count == 0) return null;
        return new ModuleModel
        {
            Name = name,
            Title = map.Text("title") ?? name,
            FormFactor = formFactor,
            Applications = applications.ToImmutable(),
            Power = map.Watts("power") ?? default,
            PowerClass = map.Whole("power-class") ?? 0,
            HasOwnFec = map.Switch("fec-in-module") ?? false,
            Price = Price(map, "price"),
            PriceMark = priceMark,
            Span = map.Span,
        };
    }

    private Application? ReadApplication(string text, MapNode map)
    {
        var at = map.SpanOf("applications");
        var arrow = text.IndexOf('>', StringComparison.Ordinal);
        var words = arrow < 0 ? [] : text[(arrow + 1)..].Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length is not (1 or 2))
        {
            findings.Add(ModelFindings.CatalogueFault, at, $"'{text}' is no application; write 'HOST>MEDIA' or 'HOST>MEDIA x4'");
            return null;
        }
        var instances = 1L;
        if (words.Length == 2
            && !(words[1].StartsWith('x') && Numerals.TryWhole(words[1].AsSpan(1), out instances) && instances is >= 1 and <= 16))
        {
            findings.Add(ModelFindings.CatalogueFault, at, $"'{words[1]}' is no count; write it as 'x4'");
            return null;
        }
        var hostName = text[..arrow].Trim();
        var host = Known(standards.Host(hostName), "host interface", hostName, standards.HostInterfaces.Select(h => h.Name), at);
        var optical = standards.Interface(words[0]);
        var copper = optical is null ? standards.Copper(words[0]) : null;
        var wavelength = optical is null && copper is null ? standards.Wavelength(words[0]) : null;
        var isKnown = optical is not null || copper is not null || wavelength is not null;
        if (!isKnown)
            Known<InterfaceType>(null, "interface type", words[0],
                standards.InterfaceTypes.Select(t => t.Name).Concat(standards.WavelengthTypes.Select(t => t.Name)), at);
        if (host is null || !isKnown) return null;
        return new Application(host, optical, copper, (int)instances) { Wavelength = wavelength };
    }

    private AssemblyModel? Assembly(string name, MapNode map)
    {
        if (FormFactorOf(map, "near") is not { } near || FormFactorOf(map, "far") is not { } far) return null;
        var medium = map.Text("medium") switch { "DAC" => CableMedium.Dac, "AEC" => CableMedium.Aec, _ => CableMedium.Aoc };
        var type = map.Text("type") is { } t
            ? Known(standards.Copper(t), "copper type", t, standards.CopperTypes.Select(c => c.Name), map.SpanOf("type"))
            : null;
        var nearHost = HostOf(map, "near-interface");
        var farHost = HostOf(map, "far-interface");
        if (medium == CableMedium.Dac ? type is null : nearHost is null || farHost is null)
        {
            findings.Add(ModelFindings.CatalogueFault, map.Span,
                $"{name}: a DAC states its type, an AEC or AOC its near-interface and far-interface");
            return null;
        }
        return new AssemblyModel
        {
            Name = name,
            Title = map.Text("title") ?? name,
            Medium = medium,
            Near = near,
            Far = far,
            Legs = map.Whole("legs") ?? 1,
            Type = type,
            NearInterface = nearHost,
            FarInterface = farHost,
            Gauge = map.Whole("awg") ?? 0,
            Lengths = LengthsOf(map),
            Price = Price(map, "price"),
            PricePerMetre = Price(map, "price-per-metre"),
            NearPower = map.Watts("power-near") ?? default,
            FarPower = map.Watts("power-far") ?? default,
            Diameter = map.Length("diameter") ?? default,
            WeightPerKilometre = map.InUnits("weight", UnitText.LineWeights) is { } kilograms ? Mass.FromKilograms(kilograms) : null,
            BendRadius = map.Length("bend-radius"),
            Plug = map.Length("plug") ?? default,
            PriceMark = priceMark,
            Span = map.Span,
        };
    }

    private CordModel? Cord(string name, MapNode map)
    {
        if (map.Text("fibre") is not { } fibre) return null;
        if (map.Text("near") != "RJ45"
            && Known(standards.Fibre(fibre), "fibre", fibre, standards.Fibres.Select(f => f.Name), map.SpanOf("fibre")) is null)
        {
            return null;
        }
        return new CordModel
        {
            Name = name,
            Title = map.Text("title") ?? name,
            Fibre = fibre,
            Near = map.Text("near") ?? "",
            Far = map.Text("far") ?? "",
            Legs = map.Whole("legs") ?? 1,
            PolishNear = map.Text("polish-near") ?? "",
            PolishFar = map.Text("polish-far") ?? "",
            PinsNear = map.Text("pins-near") ?? "",
            PinsFar = map.Text("pins-far") ?? "",
            Fibres = map.Whole("fibres"),
            Lengths = LengthsOf(map),
            Step = map.Length("step"),
            Price = Price(map, "price"),
            PricePerMetre = Price(map, "price-per-metre"),
            Diameter = map.Length("diameter") ?? default,
            WeightPerKilometre = map.InUnits("weight", UnitText.LineWeights) is { } kilograms ? Mass.FromKilograms(kilograms) : null,
            PriceMark = priceMark,
            Span = map.Span,
        };
    }

    private SundryModel? Sundry(string name, MapNode map)
    {
        var isAttenuator = map.Text("kind") == "attenuator";
        var role = map.Text("kind") switch
        {
            "line-multiplexer" => LineRole.Multiplexer,
            "line-amplifier" => LineRole.Amplifier,
            "line-pad" => LineRole.Pad,
            _ => LineRole.None,
        };
        var loss = map.Decibels("value");
        if (isAttenuator && loss is null)
        {
            findings.Add(ModelFindings.CatalogueFault, map.SpanOf("value"), $"{name}: the value of an attenuator is a loss such as '5 dB'");
            return null;
        }
        CassetteShape? cassette = null;
        if (map.Text("kind") == "cassette" && !CassetteShape.TryRead(map.Text("value") ?? "", out cassette))
        {
            findings.Add(ModelFindings.CatalogueFault, map.SpanOf("value"),
                $"{name}: the value of a cassette is what it shows, such as '{CassetteShape.Example}'");
            return null;
        }
        CouplingShape? coupling = null;
        if (map.Text("kind") == "array-adapter" && !CouplingShape.TryRead(map.Text("value") ?? "", out coupling))
        {
            findings.Add(ModelFindings.CatalogueFault, map.SpanOf("value"),
                $"{name}: the value of an array adapter is its connector and its type, such as '{CouplingShape.Example}'");
            return null;
        }
        return new SundryModel
        {
            Name = name,
            Title = map.Text("title") ?? name,
            Attenuation = isAttenuator ? loss : null,
            Adapts = map.Text("kind") == "adapter" ? map.Text("value") ?? "" : "",
            Cassette = cassette,
            Coupling = coupling,
            LineRole = role,
            Serves = role == LineRole.None ? "" : map.Text("value") ?? "",
            Power = map.Watts("power") ?? default,
            Price = Price(map, "price"),
            PriceMark = priceMark,
            Span = map.Span,
        };
    }

    private HostInterface? HostOf(MapNode map, string key) =>
        map.Text(key) is { } name
            ? Known(standards.Host(name), "host interface", name, standards.HostInterfaces.Select(h => h.Name), map.SpanOf(key))
            : null;

    private FormFactor? FormFactorOf(MapNode map, string key)
    {
        // A key that is missing has been reported.
        if (map.Text(key) is not { } name) return null;
        return Known(standards.FormFactor(name), "form factor", name, standards.FormFactors.Select(f => f.Name), map.SpanOf(key));
    }

    private T? Known<T>(T? found, string what, string name, IEnumerable<string> known, SourceSpan span)
        where T : class
    {
        if (found is null)
            findings.Add(ModelFindings.NameUnknown, span, $"no {what} is called '{name}'{Spelling.DidYouMean(name, known)}");
        return found;
    }

    private static ImmutableArray<Length> LengthsOf(MapNode map) =>
        CatalogueLanguage.TryReadLengths(map.Text("lengths") ?? "", out var lengths) ? lengths : [];

    private static Money Price(MapNode map, string key) => map.Real(key) is { } amount ? Money.FromUnits(amount) : Money.Zero;

    private static IEnumerable<(string Name, MapNode Map)> Named(MapNode root, string section) =>
        from entry in root.Map(section)?.Entries ?? []
        where entry.Value is MapNode
        select (entry.Key.Value, (MapNode)entry.Value);
}
