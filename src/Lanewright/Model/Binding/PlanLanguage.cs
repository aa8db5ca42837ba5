using System.Collections.Immutable;
using Lanewright.Model.Devices;
using Lanewright.Model.Links;
using Lanewright.Notation;

namespace Lanewright.Model.Binding;

/// <summary>What a plan file may say. Checking, JSON Schema and manual all come from here.</summary>
public static class PlanLanguage
{
    /// <summary>The version of the language this program reads.</summary>
    public const string Version = "1";

    /// <summary>Media by name: assemblies first, then fibre classes and twisted pair.</summary>
    public static ImmutableArray<string> Media { get; } =
        ["DAC", "AEC", "AOC", "OS2", "OS1a", "OS2-indoor-outdoor", "G.652.D", "OM3", "OM4", "OM5", "CAT6A"];

    /// <summary>The unit the prices of the shipped catalogue are in.</summary>
    public const string ShippedCurrency = "CU";

    private static readonly ScalarShape Medium = Shapes.OneOf(Media);

    private static readonly ScalarShape Pattern = Shapes.Matching(
        "a name pattern such as 'leaf-{n:2}'; fields are n, k, rack, row and hall",
        t => t.Trim().Length > 0 && NamePattern.TryRead(t, out _));

    /// <summary>A choice of ports.</summary>
    public static ScalarShape Ports { get; } =
        Shapes.Matching("port numbers such as '1..16, 20', or on cards '1/1..1/4'", t => PortFilter.TryRead(t, out _), @"^[0-9., /]+$");

    /// <summary>Inside sizes of what cables lie in: below the thinnest cable nothing lies, and beyond a room it is no tray.</summary>
    private static readonly ScalarShape Inside = Shapes.LengthBetween(1, 5000);

    /// <summary>Outside sizes of racks.</summary>
    private static readonly ScalarShape RackSize = Shapes.LengthBetween(100, 5000);

    /// <summary>A kind of rack.</summary>
    public static MapShape RackType { get; } = new("a kind of rack",
    [
        new("units", Shapes.Whole(1, 60), "rack units") { Otherwise = "48" },
        new("width", RackSize, "outside width; the pitch of a row") { Otherwise = "600 mm" },
        new("depth", RackSize, "outside depth") { Otherwise = "1200 mm" },
        new("front-space", Shapes.Length, "from the port face to the closed front door") { Otherwise = "150 mm" },
        new("plinth", Shapes.Length, "height of the lowest rack unit above the floor") { Otherwise = "100 mm" },
        new("device-depth", Shapes.Length, "from the front posts to the closed rear door")
        {
            Otherwise = "the depth without the front space",
        },
        new("weight-limit", Shapes.Mass, "the most that may stand in it") { Otherwise = "not judged" },
        new("own-weight", Shapes.Mass, "its own weight with doors and strips") { Otherwise = "not counted" },
        new("power-limit", Shapes.Power, "the most that may be drawn and cooled in it") { Otherwise = "not judged" },
    ]);

    /// <summary>A row of racks.</summary>
    public static MapShape Row { get; } = new("a row",
    [
        new("racks", Shapes.Whole(1, 999), "how many racks stand in it") { IsRequired = true },
        new("rack", Shapes.Text, "which kind of rack") { Otherwise = "standard" },
        new("x", Shapes.Position, "where the row begins, along it") { Otherwise = "0 m" },
        new("y", Shapes.Position, "where the row stands, across the rows") { Otherwise = "0 m" },
        new("fronts", Shapes.OneOf("near", "far"), "the side of its fronts across the rows, near being that of y; for streams of air")
        {
            Otherwise = "not known",
        },
    ]);

    /// <summary>A point in a hall.</summary>
    public static MapShape Point { get; } = new("a point in the hall",
    [
        new("x", Shapes.Position, "along the rows") { IsRequired = true },
        new("y", Shapes.Position, "across the rows") { IsRequired = true },
    ]);

    /// <summary>An end of a tray or duct.</summary>
    public static MapShape PathwayEnd { get; } = new("an end of a pathway",
    [
        new("x", Shapes.Position, "along the rows") { IsRequired = true },
        new("y", Shapes.Position, "across the rows") { IsRequired = true },
        new("height", Shapes.Position, "above the floor; below it when negative") { Otherwise = "the pathway height of the hall" },
    ]);

    /// <summary>A tray or duct.</summary>
    public static MapShape Pathway { get; } = new("a tray, riser or duct",
    [
        new("from", PathwayEnd, "where it begins") { IsRequired = true },
        new("to", PathwayEnd, "where it ends; pathways that cross or touch are joined, unless their sides or heights keep them apart")
        {
            IsRequired = true,
        },
        new("kind", Shapes.OneOf("tray", "riser", "duct"), "open tray, tray that runs straight up, or closed round duct")
        {
            Otherwise = "tray",
        },
        new("width", Inside, "inside width; of a duct its inside diameter") { IsRequired = true },
        new("depth", Inside, "inside depth; not of a duct") { Otherwise = "100 mm" },
        new("side", Shapes.Text, "the side it belongs to, such as A or B; pathways of two sides are never joined") { Otherwise = "none" },
        new("load-rating", Shapes.LineLoad, "what a metre of it bears between its supports") { Otherwise = "not judged" },
        new("bend-radius", Shapes.Length, "smallest radius cables are led round at its ends, corners and drops")
        {
            Otherwise = "not judged",
        },
        new("pull-points", Shapes.Whole(0, 1000), "of a duct: places between its ends where cables are pulled on from") { Otherwise = "0" },
    ]);

    /// <summary>A hall.</summary>
    public static MapShape Hall { get; } = new("a hall",
    [
        new("rows", new NamesShape("rows", Row), "its rows") { IsRequired = true },
        new("pathway-height", Shapes.Length, "height of the overhead pathway above the floor") { Otherwise = "2.6 m" },
        new("exit", Point, "where cables to other halls leave") { Otherwise = "x: 0 m, y: 0 m" },
        new("exits", new NamesShape("further exits", Point), "further places where cables leave, for routes that name them"),
        new("ceiling", Shapes.Length, "height of the ceiling above the floor") { Otherwise = "not judged" },
        new("pathways", new NamesShape("trays and ducts", Pathway), "trays, risers and ducts that cables lie in")
        {
            Otherwise = "cables may lie everywhere overhead",
        },
        new("altitude", Shapes.Position, "height above the sea") { Otherwise = "0 m" },
        new("inlet", Shapes.Temperature, "air at the inlets of equipment") { Otherwise = "not judged" },
        new("air-class", Shapes.OneOf("A1", "A2", "A3", "A4"), "environmental class the equipment is held to") { Otherwise = "A2" },
        new("cooling", Shapes.Power, "heat that is carried away") { Otherwise = "not judged" },
        new("floor-load", Shapes.Pressure, "what the floor bears, evenly") { Otherwise = "not judged" },
    ]);

    /// <summary>A site.</summary>
    public static MapShape Site { get; } = new("a site",
    [
        new("halls", new NamesShape("halls", Hall), "its halls") { Otherwise = "none: a place where lines meet" },
        new("east", Shapes.Position, "how far east it lies of a point of your own, for the map") { Otherwise = "not drawn to scale" },
        new("north", Shapes.Position, "how far north") { Otherwise = "not drawn to scale" },
        new("availability", Shapes.Share, "share of time in which it works, power, cooling and entries together")
        {
            Otherwise = "that of the policy",
        },
    ]);

    /// <summary>A way between halls.</summary>
    public static MapShape Route { get; } = new("a route between halls",
    [
        new("from", PlaceShapes.Hall, "one hall") { IsRequired = true },
        new("to", PlaceShapes.Hall, "the other") { IsRequired = true },
        new("length", Shapes.Distance, "how long the way is, from exit to exit") { IsRequired = true },
        new("connections", Shapes.Whole(0, 50), "mated pairs on it, those at its ends counted") { Otherwise = "policy" },
        new("splices", Shapes.Whole(0, 500), "splices on the way") { Otherwise = "0" },
        new("name", Shapes.Text, "its name") { Otherwise = "the halls it joins" },
        new("side", Shapes.Text, "the side it belongs to, such as A or B") { Otherwise = "none" },
        new("from-exit", Shapes.Text, "the exit it begins at") { Otherwise = "the exit of the hall" },
        new("to-exit", Shapes.Text, "the exit it ends at") { Otherwise = "the exit of the hall" },
        new("kind", Shapes.OneOf("tray", "duct"), "what cables lie in on the way") { Otherwise = "tray" },
        new("width", Inside, "inside width; of a duct its inside diameter") { Otherwise = "its fill is not judged" },
        new("depth", Inside, "inside depth; not of a duct") { Otherwise = "100 mm" },
        new("load-rating", Shapes.LineLoad, "what a metre of it bears between its supports") { Otherwise = "not judged" },
        new("bend-radius", Shapes.Length, "smallest radius cables are led round") { Otherwise = "not judged" },
        new("pull-points", Shapes.Whole(0, 1000), "of a duct: places on the way where cables are pulled on from") { Otherwise = "0" },
    ]);

    /// <summary>A group of devices.</summary>
    public static MapShape Group { get; } = new("a group of devices",
    [
        new("model", Shapes.Text, "the device model, by its name in the catalogue") { IsRequired = true },
        new("cards", new ListShape(Shapes.Text), "cards in its slots, in slot order; 'NAME x4' for four alike"),
        new("count", Shapes.Whole(1, 1_000_000), "how many devices") { Otherwise = "one a rack, or one" },
        new("racks", new ListShape(PlaceShapes.Racks), "where they stand: 'hall/row/1..12'"),
        new("per-rack", Shapes.Whole(1, 60), "how many in each rack") { Otherwise = "1" },
        new("unit", Shapes.Whole(1, 60), "lowest rack unit of the first in a rack") { Otherwise = "1" },
        new("step", Shapes.Whole(1, 60), "rack units from one to the next in a rack") { Otherwise = "their height" },
        new("name", Pattern, "how they are named") { Otherwise = "GROUP-{n}" },
        new("existing", Shapes.Switch, "whether they stand there already and are not bought") { Otherwise = "no" },
        new("feeds", new ListShape(Shapes.Text), "power feeds each draws from; one is down when all of them are")
        {
            Otherwise = "not known",
        },
    ]);

    /// <summary>One side of a link statement, written out.</summary>
    public static MapShape End { get; } = new("one end of a link",
    [
        new("of", new ListShape(Shapes.Text), "groups, devices or runs of devices such as leaf-1..4") { IsRequired = true },
        new("ports", Ports, "port numbers to use") { Otherwise = "the first free ones" },
        new("breakout", CatalogueLanguage.Mode, "how each cage is split") { Otherwise = "Lanewright decides" },
        new("module", Shapes.Text, "the module, by its name in the catalogue") { Otherwise = "Lanewright decides" },
        new("fec", Shapes.OneOf("none", "BASE-R", "RS(528,514)", "RS(544,514)"), "the code set at the port")
        {
            Otherwise = "what the link needs",
        },
        new("autonegotiation", Shapes.Switch, "whether it runs at the port") { Otherwise = "what the link needs" },
        new("adapter", Shapes.Switch, "whether the module sits in an adapter") { Otherwise = "no" },
    ]);

    /// <summary>A set of links.</summary>
    public static MapShape Link { get; } = new("a set of links",
    [
        new("from", new EitherShape(new ListShape(Shapes.Text), End), "one side: groups, devices, or a description") { IsRequired = true },
        new("to", new EitherShape(new ListShape(Shapes.Text), End), "the other side") { IsRequired = true },
        new("rate", Shapes.Rate, "rate of each link") { IsRequired = true },
        new("pattern", Shapes.OneOf("paired", "each-to-each", "striped", "same-rack", "same-row", "in-runs"), "who is linked to whom")
        {
            Otherwise = "paired",
        },
        new("count", Shapes.Whole(1, 1024), "links of each pair; for striped, of each device of the from side") { Otherwise = "1" },
        new("from-run", Shapes.Whole(1, 3_000_000), "for in-runs, consecutive devices of the from side in each run")
        {
            Otherwise = "spread evenly",
        },
        new("to-run", Shapes.Whole(1, 3_000_000), "for in-runs, consecutive devices of the to side in each run") { Otherwise = "1" },
        new("medium", new ListShape(Medium), "media allowed") { Otherwise = "any" },
        new("type", Shapes.Text, "interface type, such as 400GBASE-DR4") { Otherwise = "Lanewright decides" },
        new("assembly", Shapes.Text, "cable assembly, by its name in the catalogue") { Otherwise = "Lanewright decides" },
        new("cord", Shapes.Text, "cord, by its name in the catalogue") { Otherwise = "Lanewright decides" },
        new("length", Shapes.Length, "length of the cable") { Otherwise = "from the geometry" },
        new("through", new ListShape(Shapes.Text), "trunks that the links are patched through, from the first side to the second, with "
            + "cords at the ends and between them")
        {
            Otherwise = "one cable from end to end",
        },
        new("connections", Shapes.Whole(0, 50), "mated pairs in the channel, the plugs in the modules not counted")
        {
            Otherwise = "policy",
        },
        new("connection-loss", Shapes.Loss, "loss of each mated pair") { Otherwise = "policy" },
        new("splices", Shapes.Whole(0, 500), "splices in the channel") { Otherwise = "0" },
        new("splice-loss", Shapes.Loss, "loss of each splice") { Otherwise = "policy" },
        new("reflectance", Shapes.Reflectance, "reflectance of each connection") { Otherwise = "policy, or by the polish" },
        new("attenuation", Shapes.Attenuation, "measured fibre attenuation") { Otherwise = "the limit of the fibre class" },
        new("measured-loss", Shapes.Loss, "measured loss of the whole channel") { Otherwise = "computed" },
        new("attenuator", Shapes.Loss, "an attenuator in the channel") { Otherwise = "none" },
        new("existing", Shapes.Switch, "whether the cable lies there already and is not bought") { Otherwise = "no" },
        new("side", Shapes.Text, "lie only in pathways of this side, or of none") { Otherwise = "any" },
        new("apart-from", Shapes.Text, "a set, or this one: links of the same device then go by ways that share no stretch")
        {
            Otherwise = "the shortest way",
        },
        new("latency", Shapes.Delay, "longest delay allowed") { Otherwise = "none" },
        new("network", Shapes.Text, "the network it belongs to; links of several never carry one another's traffic")
        {
            Otherwise = DemandLanguage.MainNetwork,
        },
    ]);

    /// <summary>Copper lengths by rate.</summary>
    public static MapShape CopperLimit { get; } = new("a limit of passive copper",
    [
        new("rate", Shapes.Rate, "from this rate of the whole assembly") { IsRequired = true },
        new("length", Shapes.Length, "no longer than this") { IsRequired = true },
    ]);

    /// <summary>Policy.</summary>
    public static MapShape Policy { get; } = new("the policy",
    [
        new("connection-loss", Shapes.Loss, "loss of a mated pair") { Otherwise = "0.5 dB" },
        new("connection-grade", Shapes.OneOf("B", "C", "D"), "grade of connectors, for the chance that a link exceeds its limit")
        {
            Otherwise = "not judged",
        },
        new("splice-loss", Shapes.Loss, "loss of a splice") { Otherwise = "0.1 dB" },
        new("reflectance", Shapes.Reflectance, "reflectance of every connection") { Otherwise = "by the polish" },
        new("ageing-margin", Shapes.Loss, "loss kept back for ageing and repair") { Otherwise = "0 dB" },
        new("least-margin", Shapes.Loss, "a fibre link with less margin is warned of") { Otherwise = "0 dB" },
        new("connections-in-hall", Shapes.Whole(0, 50), "mated pairs in a channel inside a hall") { Otherwise = "0" },
        new("connections-between-halls", Shapes.Whole(0, 50), "mated pairs on each route between halls that states none")
        {
            Otherwise = "2",
        },
        new("contingency", Shapes.Share, "extra length for detours inside halls; a route is as long as stated") { Otherwise = "5 %" },
        new("service", Shapes.Length, "extra length at each end of a cable that leaves its rack")
        {
            Otherwise = "0.5 m when the cable leaves its rack",
        },
        new("in-rack", Shapes.Length, "from the port to the side of the rack, at each end") { Otherwise = "0.3 m" },
        new("prefer", new ListShape(Medium), "media to choose from first, best first") { Otherwise = "the cheapest" },
        new("forbid", new ListShape(Medium), "media never to choose") { Otherwise = "none" },
        new("prefer-form-factor", new ListShape(Shapes.Text), "form factors of modules to choose from first"),
        new("copper-limits", new ListShape(CopperLimit), "how long passive copper may be, by rate")
        {
            Otherwise = "3 m from 100G, 2 m from 400G",
        },
        new("bend-category", Shapes.OneOf("G.652.D", "G.657.A1", "G.657.A2", "G.657.B2", "G.657.B3"),
            "how well single-mode fibre bears bends, for what bends in pathways cost")
        {
            Otherwise = "not reckoned",
        },
        new("spares", Shapes.Share, "spare parts to buy on top of what is used") { Otherwise = "0 %" },
        new("spare-level", SpareLanguage.Level, "how sure spares last until more arrive; needs failure rates")
        {
            Otherwise = "not reckoned",
        },
        new("drafts", Shapes.Switch, "whether types may be chosen whose standard is a draft") { Otherwise = "no" },
        new("split", Shapes.OneOf([.. DemandLanguage.Splits.Select(s => s.Name)]), "how switches split traffic over several ways")
        {
            Otherwise = "per-hop",
        },
        new("most-utilisation", Shapes.Share, "a link that a demand fills beyond this is overloaded") { Otherwise = "100 %" },
        new("oversubscription", new ListShape(WantedLanguage.OversubscriptionRatio),
            "most bandwidth below a switch against that above, tier by tier; the last stated holds for the tiers above")
        {
            Otherwise = "any",
        },
        new("breaker-share", Shapes.PartOf, "share of a breaker that continuous load may take; the wiring rules of the country decide")
        {
            Otherwise = "80 %",
        },
        new("power-factor", Shapes.PartOf, "power factor of the equipment") { Otherwise = "95 %" },
        new("pue", Shapes.Real(1, 10), "energy of the site over that of the equipment") { Otherwise = "not reckoned" },
        new("site-availability", Shapes.Share, "share of time in which a site works, where it says nothing of its own")
        {
            Otherwise = "sites are taken as always up, and a finding says so",
        },
        new("fibre-cuts", Shapes.Amount, "cuts of fibre between sites in a year on 1000 km") { Otherwise = "2.73" },
        new("fibre-repair", Shapes.Repair, "from a cut of such fibre until it works again") { Otherwise = "12 h" },
        new("failure-rates", new ListShape(DemandLanguage.FailureRate), "how often things fail, for availability")
        {
            Otherwise = "not reckoned",
        },
    ]);

    /// <summary>One line of stock.</summary>
    public static MapShape Stock { get; } = new("a line of stock",
    [
        new("model", Shapes.Text, "what it is, by its name in the catalogue") { IsRequired = true },
        new("quantity", Shapes.Whole(0, 10_000_000), "how many") { IsRequired = true },
        new("length", Shapes.Length, "for a cable, its length"),
        new("note", Shapes.Text, "a remark"),
    ]);

    /// <summary>A whole plan file.</summary>
    public static MapShape File { get; } = new("a plan",
    [
        new("lanewright", Shapes.Whole(1, 999), "version of the language: 1") { IsRequired = true },
        new("name", Shapes.Text, "its name, used in file names and headings") { Otherwise = "the name of the file" },
        new("title", Shapes.Text, "what it is about"),
        new("revision", Shapes.Text, "its revision"),
        new("date", Shapes.Text, "its date; no clock is ever read"),
        new("currency", Shapes.Text, "the unit of its prices") { Otherwise = "CU" },
        new("include", new ListShape(Shapes.Text), "further plan files"),
        new("catalogue", new ListShape(Shapes.Text), "catalogue files, YAML or CSV, that extend or replace the shipped items"),
        new("standards", new ListShape(Shapes.Text),
            "tables of standards values that replace shipped rows; a file is named like its table, as my-fibres.csv"),
        new("stock-files", new ListShape(Shapes.Text), "tables of stock in CSV: model, quantity, length, note"),
        new("policy", Policy, "what holds for the whole project"),
        new("racks", new NamesShape("kinds of rack", RackType), "kinds of rack"),
        new("sites", new NamesShape("sites", Site), "sites, halls and rows"),
        new("routes", new ListShape(Route), "ways between halls"),
        new("devices", new NamesShape("groups of devices", Group), "devices"),
        new("trunks", new NamesShape("trunks", TrunkLanguage.Trunk), "trunks between panels"),
        new("links", new NamesShape("sets of links", Link), "links"),
        new("power", new NamesShape("power feeds", PowerLanguage.Feed), "power feeds"),
        new("spans", new NamesShape("spans", LineLanguage.Span), "fibre between sites"),
        new("lines", new NamesShape("lines", LineLanguage.Line), "wavelengths between sites"),
        new("labels", LabelLanguage.Section, "the sheets that labels are printed on"),
        new("demands", new NamesShape("demands", DemandLanguage.Demand), "traffic to carry"),
        new("stock", new ListShape(Stock), "equipment on hand"),
        new("wanted", WantedLanguage.Section, "the fabric that is wanted; 'lanewright size' answers"),
    ]);
}
