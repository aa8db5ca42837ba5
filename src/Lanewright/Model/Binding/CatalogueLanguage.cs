using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Notation;
using Lanewright.Quantities;

namespace Lanewright.Model.Binding;

/// <summary>What a catalogue file may say. Checking, JSON Schema and manual all come from here.</summary>
public static class CatalogueLanguage
{
    /// <summary>A port mode.</summary>
    public static ScalarShape Mode { get; } =
        Shapes.Matching("a port mode such as '4x100G'", t => PortMode.TryRead(t, out _), "^[0-9]+x[0-9.]+(G|T|M|Gb/s|Tb/s|Mb/s)$");

    private static readonly ScalarShape Lengths =
        Shapes.Matching("stocked lengths such as '0.5 1 2 m'", t => TryReadLengths(t, out _), @"^[0-9. ]+\s*(m|cm|mm|ft|in)$");

    private static readonly MapShape RaisedPower = new("a raised power limit",
    [
        new("every", Shapes.Whole(1, 256), "which cages: with 4 those numbered 4, 8, 12 and so on in their row") { IsRequired = true },
        new("limit", Shapes.Power, "the limit of those cages") { IsRequired = true },
    ]);

    /// <summary>A row of cages alike.</summary>
    public static MapShape Cage { get; } = new("a row of cages",
    [
        new("count", Shapes.Whole(1, 1024), "how many cages") { IsRequired = true },
        new("form-factor", Shapes.Text, "the module they take") { IsRequired = true },
        new("lanes", Shapes.Whole(1, 16), "electrical lanes wired to each") { Otherwise = "those of the form factor" },
        new("lane-rates", new ListShape(Shapes.Text), "lane rates the silicon can run, slowest first: 10G, 25G, 50G, 100G, 200G")
        {
            IsRequired = true,
        },
        new("modes", new ListShape(Mode), "port modes the platform lists") { IsRequired = true },
        new("neighbour-lost", new ListShape(Mode), "modes that cost the next cage; only odd cages can take them"),
        new("power", Shapes.Power, "the most one module may draw"),
        new("raised-power", RaisedPower, "cages with a higher limit"),
        new("fec", new ListShape(Shapes.Text), "codes the silicon has: none, BASE-R, RS(528,514), RS(544,514)")
        {
            Otherwise = "what each type asks for",
        },
        new("autonegotiation", Shapes.Switch, "whether it runs on copper here") { Otherwise = "yes" },
        new("high-power", Shapes.Switch, "whether the platform raises modules out of low power") { Otherwise = "yes" },
        new("adapters", Shapes.Switch, "whether the platform knows modules in adapters") { Otherwise = "no" },
        new("rate-group", Shapes.Whole(1, 64), "cages that share one rate, in blocks of this many") { Otherwise = "1" },
    ]);

    /// <summary>A switch, chassis or host.</summary>
    public static MapShape Device { get; } = new("a device model",
    [
        new("kind", Shapes.OneOf("switch", "chassis", "host", "panel"), "what it is for") { IsRequired = true },
        new("title", Shapes.Text, "what it is, in words") { IsRequired = true },
        new("cages", new ListShape(Cage), "cages on its own faceplate"),
        new("slots", Shapes.Whole(0, 64), "slots for cards; of a panel, ends of trunks it takes") { Otherwise = "0" },
        new("units", Shapes.Whole(0, 60), "height in rack units") { Otherwise = "1" },
        new("depth", Shapes.Length, "depth behind the front posts"),
        new("weight", Shapes.Mass, "weight without modules"),
        new("typical", Shapes.Power, "power under a usual load, without modules"),
        new("maximum", Shapes.Power, "most power, without modules"),
        new("module-budget", Shapes.Power, "power it can spare for modules in total"),
        new("port-ceiling", Shapes.Whole(1, 8192), "logical ports it can have"),
        new("capacity", Shapes.Rate, "switching capacity in one direction"),
        new("airflow", Shapes.OneOf(DeviceModel.FrontToBack, DeviceModel.BackToFront, DeviceModel.SideToSide), "which way its air goes")
        {
            Otherwise = DeviceModel.FrontToBack,
        },
        new("price", Shapes.Amount, "price of one"),
    ]);

    /// <summary>A card.</summary>
    public static MapShape Card { get; } = new("a card model",
    [
        new("title", Shapes.Text, "what it is, in words") { IsRequired = true },
        new("cages", new ListShape(Cage), "its cages") { IsRequired = true },
        new("typical", Shapes.Power, "power under a usual load, without modules"),
        new("maximum", Shapes.Power, "most power, without modules"),
        new("weight", Shapes.Mass, "weight"),
        new("port-ceiling", Shapes.Whole(1, 8192), "logical ports it can have"),
        new("price", Shapes.Amount, "price of one"),
    ]);

    /// <summary>A module.</summary>
    public static MapShape Module { get; } = new("a module",
    [
        new("title", Shapes.Text, "what it is, in words") { IsRequired = true },
        new("form-factor", Shapes.Text, "its body") { IsRequired = true },
        new("applications", Shapes.Text, "what it can run: 'HOST>MEDIA' or 'HOST>MEDIA x4', separated by ';'") { IsRequired = true },
        new("power", Shapes.Power, "declared most power") { IsRequired = true },
        new("power-class", Shapes.Whole(1, 8), "power class of its form factor"),
        new("fec-in-module", Shapes.Switch, "whether it ends the host's code and adds its own") { Otherwise = "no" },
        new("price", Shapes.Amount, "price of one"),
        new("note", Shapes.Text, "a remark"),
    ]);

    /// <summary>A cable with its ends on.</summary>
    public static MapShape Assembly { get; } = new("a cable assembly",
    [
        new("title", Shapes.Text, "what it is, in words") { IsRequired = true },
        new("medium", Shapes.OneOf("DAC", "AEC", "AOC"), "passive copper, active copper or active optical") { IsRequired = true },
        new("near", Shapes.Text, "form factor of the end with all lanes") { IsRequired = true },
        new("far", Shapes.Text, "form factor of each leg's end") { IsRequired = true },
        new("legs", Shapes.Whole(1, 16), "legs of a fan-out") { Otherwise = "1" },
        new("type", Shapes.Text, "passive copper: interface type of each leg"),
        new("near-interface", Shapes.Text, "active cable: electrical interface of each leg at the near end"),
        new("far-interface", Shapes.Text, "active cable: electrical interface of each leg at its far end"),
        new("awg", Shapes.Whole(18, 40), "wire gauge of copper"),
        new("lengths", Lengths, "lengths it is stocked in") { IsRequired = true },
        new("price", Shapes.Amount, "price without its metres"),
        new("price-per-metre", Shapes.Amount, "price of each metre"),
        new("power-near", Shapes.Power, "power of the near end"),
        new("power-far", Shapes.Power, "power of each far end"),
        new("diameter", Shapes.Length, "outside diameter"),
        new("weight", Shapes.LineWeight, "what it weighs by length") { Otherwise = "reckoned from diameter and kind" },
        new("bend-radius", Shapes.Length, "smallest bend the maker allows"),
        new("plug", Shapes.Length, "how far the plug stands out of the cage"),
        new("note", Shapes.Text, "a remark"),
    ]);

    /// <summary>A cord.</summary>
    public static MapShape Cord { get; } = new("a cord",
    [
        new("title", Shapes.Text, "what it is, in words") { IsRequired = true },
        new("fibre", Shapes.Text, "class of fibre, or CAT6A") { IsRequired = true },
        new("near", Shapes.Text, "connector of the end with all positions") { IsRequired = true },
        new("far", Shapes.Text, "connector of each leg") { IsRequired = true },
        new("legs", Shapes.Whole(1, 16), "legs of a fan-out") { Otherwise = "1" },
        new("polish-near", Shapes.OneOf("PC", "UPC", "APC"), "polish of the near end"),
        new("polish-far", Shapes.OneOf("PC", "UPC", "APC"), "polish of each leg's end"),
        new("pins-near", Shapes.OneOf("pinned", "unpinned"), "alignment pins of the near end") { Otherwise = "what is usual there" },
        new("pins-far", Shapes.OneOf("pinned", "unpinned"), "alignment pins of each leg's end") { Otherwise = "what is usual there" },
        new("fibres", Shapes.Whole(2, 72), "fibres of an array cable whose middle positions are empty") { Otherwise = "one a position" },
        new("lengths", Lengths, "lengths it is stocked in") { IsRequired = true },
        new("step", Shapes.Length, "beyond them it is made to order in these steps"),
        new("price", Shapes.Amount, "price without its metres"),
        new("price-per-metre", Shapes.Amount, "price of each metre"),
        new("diameter", Shapes.Length, "outside diameter"),
        new("weight", Shapes.LineWeight, "what it weighs by length") { Otherwise = "reckoned from diameter and kind" },
        new("note", Shapes.Text, "a remark"),
    ]);

    /// <summary>Kinds of small parts; those of lines carry their role.</summary>
    public static ImmutableArray<string> SundryKinds { get; } =
        ["attenuator", "adapter", "array-adapter", "cassette", "line-multiplexer", "line-amplifier", "line-pad"];

    /// <summary>A small part.</summary>
    public static MapShape Sundry { get; } = new("a small part",
    [
        new("title", Shapes.Text, "what it is, in words") { IsRequired = true },
        new("kind", Shapes.OneOf(SundryKinds), "what it does") { IsRequired = true },
        new("value", Shapes.Text, "loss of an attenuator; what an adapter turns into what; what an array adapter joins "
            + "and its type, such as 'MPO-12 type A'; what a cassette shows at its front and its rear, "
            + "such as '6 x LC-duplex UPC from MPO-12 APC unpinned, single-mode'; the channels of a line "
            + "multiplexer, with CWDM before them for coarse ones; the model of a line amplifier; the most a line pad takes, in "
            + "dB") { IsRequired = true },
        new("price", Shapes.Amount, "price of one"),
        new("power", Shapes.Power, "most power it draws"),
        new("note", Shapes.Text, "a remark"),
    ]);

    /// <summary>A whole catalogue in YAML.</summary>
    public static MapShape File { get; } = new("a catalogue",
    [
        new("devices", new NamesShape("device models", Device), "switches, chassis and hosts"),
        new("cards", new NamesShape("card models", Card), "cards for chassis and hosts"),
        new("modules", new NamesShape("modules", Module), "pluggable modules"),
        new("assemblies", new NamesShape("cable assemblies", Assembly), "DAC, AEC and AOC"),
        new("cords", new NamesShape("cords", Cord), "fibre and twisted-pair cords"),
        new("sundries", new NamesShape("small parts", Sundry), "attenuators and adapters"),
    ]);

    /// <summary>The shapes of catalogue tables in CSV, by the name of their first column.</summary>
    public static ImmutableArray<(string Kind, MapShape Shape)> Tables { get; } =
        [("module", Module), ("assembly", Assembly), ("cord", Cord), ("sundry", Sundry)];

    /// <summary>Reads stocked lengths: numbers and, at the end, their unit.</summary>
    public static bool TryReadLengths(string text, out ImmutableArray<Length> lengths)
    {
        lengths = [];
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length < 2) return false;
        var read = ImmutableArray.CreateBuilder<Length>(words.Length - 1);
        foreach (var word in words[..^1])
        {
            if (!UnitText.TryRead(word + words[^1], UnitText.Lengths, out var metres) || metres <= 0) return false;
            read.Add(Length.FromMetres(metres));
        }
        read.Sort();
        lengths = read.ToImmutable();
        return true;
    }
}
