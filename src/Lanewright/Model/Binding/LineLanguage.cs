using System.Collections.Immutable;
using Lanewright.Notation;

namespace Lanewright.Model.Binding;

/// <summary>What a plan may say of fibre between sites and of lines over it.</summary>
public static class LineLanguage
{
    /// <summary>The word for an amplifier that is not to be had.</summary>
    public const string None = "no";

    /// <summary>Schemes by name, cheapest first.</summary>
    public static ImmutableArray<string> Schemes { get; } =
    [
        "grey", "cwdm-direct", "dwdm-direct", "coherent", "coherent-booster", "coherent-preamplifier", "coherent-booster-preamplifier",
        "coherent-in-line",
    ];

    private const string OfLine = "a noise figure such as '5.5 dB', the name of a model, or 'no'";

    /// <summary>A span.</summary>
    public static MapShape Span { get; } = new("a span",
    [
        new("from", Shapes.Text, "one site") { IsRequired = true },
        new("to", Shapes.Text, "the other") { IsRequired = true },
        new("length", Shapes.Length, "how long the fibre is") { IsRequired = true },
        new("fibre", Shapes.OneOf("G.652.D", "G.654.E", "G.655"), "its kind") { Otherwise = "G.652.D" },
        new("loss", Shapes.LossOfLength, "loss of the glass near 1550 nm") { Otherwise = "that of the kind" },
        new("measured-loss", Shapes.Loss, "measured loss from end to end near 1550 nm, connectors and splices in it")
        {
            Otherwise = "computed",
        },
        new("dispersion", Shapes.DispersionRate, "measured dispersion at 1550 nm") { Otherwise = "that of the kind" },
        new("pmd", Shapes.ModeDispersion, "measured polarisation-mode dispersion") { Otherwise = "that of the kind" },
        new("connectors", Shapes.Whole(0, 1000), "mated pairs") { Otherwise = "0" },
        new("connector-loss", Shapes.Loss, "loss of each mated pair") { Otherwise = "0.3 dB" },
        new("splices", Shapes.Whole(0, 10_000), "splices") { Otherwise = "0" },
        new("splice-loss", Shapes.Loss, "loss of each splice") { Otherwise = "0.1 dB" },
        new("ageing-margin", Shapes.Loss, "loss kept back for ageing") { Otherwise = "0 dB" },
        new("repair-years", Shapes.Whole(0, 100), "years of repairs that loss is kept back for") { Otherwise = "0" },
        new("ducts", new ListShape(Shapes.Text), "ducts, bridges, entries and the like it shares with spans that name the same")
        {
            Otherwise = "it shares nothing",
        },
        new("huts", Shapes.OneOf("none", "anywhere"), "where amplifiers may stand along it") { Otherwise = "none: at its sites alone" },
        new("cost", Shapes.Amount, "what a pair of it costs; where every span says so, ways are chosen by cost")
        {
            Otherwise = "ways are chosen by length",
        },
        new("pairs", Shapes.Whole(1, 10_000), "pairs of fibres to be had") { Otherwise = "1" },
    ]);

    private static readonly MapShape OneTerminal = new("one end of a line",
    [
        new("of", new ListShape(Shapes.Text), "groups, devices or runs of devices; channels, one route after the other, are dealt to "
            + "them in equal runs") { IsRequired = true },
        new("ports", PlanLanguage.Ports, "port numbers to use") { Otherwise = "the first free ones" },
        new("module", Shapes.Text, "the module, by its name in the catalogue") { Otherwise = "the cheapest that fits" },
    ]);

    private static readonly EitherShape Terminals = new(new ListShape(Shapes.Text), OneTerminal);

    /// <summary>A line.</summary>
    public static MapShape Line { get; } = new("a line",
    [
        new("from", Shapes.Text, "one site") { IsRequired = true },
        new("to", Shapes.Text, "the other") { IsRequired = true },
        new("type", Shapes.Text, "interface type of each wavelength, such as 400ZR") { Otherwise = "Lanewright decides" },
        new("rate", Shapes.Rate, "rate of each channel, where no type is named") { Otherwise = "that of the type" },
        new("channels", Shapes.Whole(1, 768), "channels on each route") { Otherwise = "1" },
        new("spacing", Shapes.Frequency, "from channel to channel") { Otherwise = "100 GHz, or what the type needs" },
        new("first", Shapes.Frequency, "the lowest channel") { Otherwise = "the middle of the band" },
        new("routes", Shapes.OneOf("1", "2"), "routes that share nothing, each with all channels") { Otherwise = "1" },
        new("over", new ListShape(Shapes.Text), "spans of the first route, in order") { Otherwise = "the shortest" },
        new("other-way", new ListShape(Shapes.Text), "spans of the second route, in order") { Otherwise = "the shortest pair" },
        new("scheme", Shapes.OneOf(Schemes), "how it is built") { Otherwise = "the first that works, cheapest first" },
        new("booster", Shapes.Text, "behind the transmitters: " + OfLine) { Otherwise = "as needed" },
        new("preamplifier", Shapes.Text, "before the receivers: " + OfLine) { Otherwise = "as needed" },
        new("in-line", Shapes.Text, "at the sites between: " + OfLine) { Otherwise = "as needed" },
        new("multiplexer-loss", Shapes.Loss, "loss of each multiplexer") { Otherwise = "5.5 dB" },
        new("launch", Shapes.Level, "launch of each channel behind the booster") { Otherwise = "the best" },
        new("transmitter", Shapes.Level, "lowest level of the transmitters") { Otherwise = "that of the type" },
        new("transmitter-osnr", Shapes.Loss, "signal over noise of the transmitters") { Otherwise = "that of the type" },
        new("pdl", Shapes.Loss, "polarisation-dependent loss of the whole line") { Otherwise = "from its parts" },
        new("filter-penalty", Shapes.Loss, "what multiplexers take of the signal over noise where a spectrum is wider than its channel, by "
            + "their maker") { Otherwise = "that of the type, or unproven" },
        new("least-margin", Shapes.Loss, "margin of signal over noise to be kept") { Otherwise = "0 dB" },
        new("from-ports", Terminals, "devices and ports that its modules sit in at the first site")
        {
            Otherwise = "left out of documents",
        },
        new("to-ports", Terminals, "the same at the second site") { Otherwise = "left out of documents" },
        new("from-shelf", new ListShape(Shapes.Text), "frames with its multiplexers and amplifiers at the first site, one for all routes "
            + "or one for each") { Otherwise = "cords have no length" },
        new("to-shelf", new ListShape(Shapes.Text), "the same at the second site") { Otherwise = "cords have no length" },
        new("from-panel", new ListShape(Shapes.Text), "panels that its spans end in at the first site, one for all routes or one for "
            + "each")
        {
            Otherwise = "cords have no length",
        },
        new("to-panel", new ListShape(Shapes.Text), "the same at the second site") { Otherwise = "cords have no length" },
        new("latency", Shapes.Delay, "longest delay in one direction") { Otherwise = "not judged" },
        new("latency-difference", Shapes.Delay, "largest difference of delay between the two routes") { Otherwise = "not judged" },
        new("availability", Shapes.Share, "share of time in which it has to carry something") { Otherwise = "not judged" },
    ]);
}
