using System.CommandLine;
using System.CommandLine.Parsing;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Model.Binding;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Cli.Commands;

/// <summary><c>line</c>: a line between sites, asked about by itself.</summary>
internal sealed class LineCommand
{
    private readonly Argument<string?> plan = new("PLAN")
    {
        Description = "a plan with lines, or a folder that holds plan.yaml; without one the options ask about a line by itself",
        Arity = ArgumentArity.ZeroOrOne,
    };
    private readonly Option<string?> name = new("--line") { Description = "of a plan: one line by its name" };
    private readonly Option<string?> length = new("--length") { Description = "length of the fibre, such as 80km" };
    private readonly Option<string?> type = new("--type") { Description = "interface type of each wavelength, such as 400ZR" };
    private readonly Option<string?> rate = new("--rate") { Description = "instead of a type: the rate of each channel, such as 400G" };
    private readonly Option<int> channels = new("--channels") { Description = "how many; 1", DefaultValueFactory = _ => 1 };
    private readonly Option<string?> spacing = new("--spacing")
    {
        Description = "from channel to channel, such as 75GHz; 100GHz, or what the type needs",
    };
    private readonly Option<string?> first = new("--first") { Description = "lowest channel, such as 193.1THz; the middle of the band" };
    private readonly Option<string?> fibre = new("--fibre") { Description = "kind of fibre: G.652.D, G.654.E or G.655; G.652.D" };
    private readonly Option<string?> loss = new("--loss") { Description = "loss of the fibre, such as 0.22dB/km" };
    private readonly Option<string?> measured = new("--measured-loss")
    {
        Description = "measured loss from end to end, connectors and splices in it",
    };
    private readonly Option<string?> dispersion = new("--dispersion") { Description = "measured dispersion, such as 16.9ps/nm/km" };
    private readonly Option<int> connectors = new("--connectors") { Description = "mated pairs on the fibre" };
    private readonly Option<string?> connectorLoss = new("--connector-loss") { Description = "loss of each mated pair" };
    private readonly Option<int> splices = new("--splices") { Description = "splices on the fibre" };
    private readonly Option<string?> spliceLoss = new("--splice-loss") { Description = "loss of each splice" };
    private readonly Option<string?> ageing = new("--ageing-margin") { Description = "loss kept back for ageing" };
    private readonly Option<double?> years = new("--repair-years") { Description = "keep loss back for repairs of so many years" };
    private readonly Option<string?> booster = new("--booster")
    {
        Description = "noise figure of the booster, such as 5.5dB, or the name of a model, or 'no'",
    };
    private readonly Option<string?> preamplifier = new("--preamp") { Description = "the same of the preamplifier" };
    private readonly Option<string?> inLine = new("--inline") { Description = "the same of in-line amplifiers" };
    private readonly Option<string?> multiplexer = new("--mux") { Description = "loss of each multiplexer, such as 5.5dB" };
    private readonly Option<string?> launch = new("--launch")
    {
        Description = "launch of each channel behind the booster, such as -2dBm; the best",
    };
    private readonly Option<string?> transmitter = new("--tx") { Description = "lowest level of the transmitters, such as -10dBm" };
    private readonly Option<string?> transmitterOsnr = new("--tx-osnr") { Description = "signal over noise of the transmitters" };
    private readonly Option<string?> pdl = new("--pdl") { Description = "polarisation-dependent loss of the whole line" };
    private readonly Option<string?> filter = new("--filter-penalty")
    {
        Description = "what multiplexers take of the signal over noise where a spectrum is wider than its channel, by their maker",
    };
    private readonly Option<string?> least = new("--least-margin") { Description = "margin of signal over noise to be kept" };
    private readonly Option<int> pairs = new("--pairs") { Description = "pairs of fibres; 1", DefaultValueFactory = _ => 1 };
    private readonly Option<string?> sweep = new("--sweep") { Description = "also the margin over length, channels or launch" };
    private readonly Option<string?> output = new("--out")
    {
        Description = "without a plan: a file ending in .svg for a chart of the margin over what --sweep names, or over all three",
    };
    private readonly Option<bool> json = CommonOptions.Json();

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var o = new LineCommand();
        var command = new Command("line", "engineer a line between sites: wavelengths, amplifiers, margins")
        {
            o.plan, o.name, o.length, o.type, o.rate, o.channels, o.spacing, o.first, o.fibre, o.loss, o.measured, o.dispersion,
            o.connectors, o.connectorLoss, o.splices, o.spliceLoss, o.ageing, o.years, o.booster, o.preamplifier, o.inLine, o.multiplexer,
            o.launch, o.transmitter, o.transmitterOsnr, o.pdl, o.filter, o.least, o.pairs, o.sweep, o.output, o.json,
        };
        command.SetAction(o.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        if (parsed.GetValue(plan) is { } path) return Plan(parsed, path);
        var answer = LineLadder.Of(QuestionOf(parsed, StandardsLibrary.Shipped));
        var swept = Swept(parsed) is { } quantity ? LineSweep.Over(answer, quantity) : null;
        if (parsed.GetValue(output) is { } file) Chart(answer, swept, file);
        if (parsed.GetValue(json)) Screen.Document(stream => LineJson.Write(
            answer, CatalogueBinder.Shipped, PlanLanguage.ShippedCurrency, swept, stream));
        else LinePrinter.Print(answer, CatalogueBinder.Shipped, PlanLanguage.ShippedCurrency, swept);
        return answer.Design.Verdict != Verdict.Pass ? ExitCodes.ErrorsFound : ExitCodes.NoErrors;
    }

    /// <summary>The lines of a plan. What is wrong with the plan beside its lines is for 'check' to say.</summary>
    private int Plan(ParseResult parsed, string path)
    {
        Option[] ofPlans = [name, sweep, json];
        foreach (var given in parsed.CommandResult.Children.OfType<OptionResult>())
            if (!given.Implicit && !ofPlans.Contains(given.Option))
                throw new UsageFault($"a plan says itself what its lines are made of; leave {given.Option.Name} out");
        var swept = Swept(parsed);
        var judged = CommonOptions.Compile(path);
        var designed = CommonOptions.Designed(judged);
        var all = designed.Lines.Value.Lines;
        if (all.IsEmpty) throw new UsageFault("the plan has no lines, or none that could be read; 'lanewright check' shows why");
        var wanted = parsed.GetValue(name);
        var lines = all.Where(l => wanted is null || l.Statement.Name == wanted).ToList();
        if (lines.Count == 0)
            throw new UsageFault($"the plan has no line '{wanted}' that could be read"
                + Spelling.DidYouMean(wanted ?? "", all.Select(l => l.Statement.Name))
                + (judged.HasErrors ? "; 'lanewright check' shows what stands in the way" : ""));
        var faults = PlanFaults.OfLines(designed.Findings);
        if (parsed.GetValue(json)) Screen.Document(stream => PlanLinesJson.Write(lines, designed, stream, swept));
        else
        {
            if (faults.Length > 0) FindingPrinter.Print(Screen.Lines, faults);
            foreach (var line in lines) LinePrinter.Print(line, designed.Plan, swept);
        }
        return faults.Length > 0 || lines.Any(l => l.Verdict != Verdict.Pass) ? ExitCodes.ErrorsFound : ExitCodes.NoErrors;
    }

    private string? Swept(ParseResult parsed)
    {
        var quantity = parsed.GetValue(sweep);
        return quantity is null || LineSweep.Quantities.Contains(quantity) ? quantity
            : throw new UsageFault($"--sweep '{quantity}' is none of {string.Join(", ", LineSweep.Quantities)}");
    }

    private static void Chart(LineAnswer answer, LineSweep? swept, string file)
    {
        if (!file.EndsWith(".svg", StringComparison.Ordinal)) throw new UsageFault($"--out {file}: name a file that ends in .svg");
        var sweeps = swept is null ? LineSweep.Quantities.Select(q => LineSweep.Over(answer, q)) : [swept];
        if (LineChart.Of(answer, [.. sweeps]) is not { } drawing)
            throw new UsageFault($"there is nothing to draw: {swept?.WhyNone ?? "no margin is known"}");
        var folder = Path.GetDirectoryName(Path.GetFullPath(file)) ?? ".";
        DocumentFolder.Write(folder, [new Deliverable(Path.GetFileName(file), drawing)], _ => { });
    }

    private LineQuestion QuestionOf(ParseResult parsed, StandardsLibrary standards)
    {
        var types = standards.WavelengthTypes.Select(t => t.Name).ToList();
        if (parsed.GetValue(length) is null) throw new UsageFault("give a plan, or the length of a span with --length");
        var named = parsed.GetValue(type) is { } called
            ? standards.Wavelength(called) ?? throw new UsageFault(
                $"no type of a wavelength is called '{called}'{Spelling.DidYouMean(called, types)}; known are {string.Join(", ", types)}")
            : null;
        var wanted = QuantityOptions.Rate(parsed, rate);
        if (named is null == wanted is null) throw new UsageFault("give either --type or --rate");
        if (parsed.GetValue(pairs) < 1) throw new UsageFault("--pairs is 1 or more");
        var width = parsed.GetValue(spacing) is null
            ? standards.UsualSpacing(named, wanted ?? default)
            : new SpacingChoice(GridCommand.SpacingOf(parsed, spacing), SpacingChoice.Stated);
        return new LineQuestion
        {
            Standards = standards,
            Catalogue = CatalogueBinder.Shipped,
            Type = named,
            Rate = named?.Rate ?? wanted ?? default,
            Channels = GridCommand.PlanOf(standards.Grid, width.Spacing, GridCommand.FrequencyOf(parsed, first), parsed.GetValue(channels)),
            SpacingWhy = width.Why,
            Spans = [SpanOf(parsed, standards)],
            Equipment = EquipmentOf(parsed, standards),
            Pairs = parsed.GetValue(pairs),
            Launch = Level(parsed, launch),
            Transmitter = Level(parsed, transmitter),
            TransmitterOsnr = QuantityOptions.Ratio(parsed, transmitterOsnr),
            Pdl = QuantityOptions.Loss(parsed, pdl),
            FilterPenalty = QuantityOptions.Loss(parsed, filter),
            LeastMargin = QuantityOptions.Loss(parsed, least) ?? default,
        };
    }

    private LineSpan SpanOf(ParseResult parsed, StandardsLibrary standards)
    {
        var kind = parsed.GetValue(fibre) ?? "G.652.D";
        var known = standards.LineFibres.Select(f => f.Name).ToList();
        var glass = standards.LineFibre(kind)
            ?? throw new UsageFault($"no fibre of lines is called '{kind}'; known are {string.Join(", ", known)}");
        var far = QuantityOptions.RequiredLength(parsed, length);
        if (far.Metres is < 1 or > 2e7) throw new UsageFault("--length lies between 1m and 20000km");
        if (parsed.GetValue(connectors) is < 0 or > MostParts || parsed.GetValue(splices) is < 0 or > MostParts)
            throw new UsageFault($"--connectors and --splices lie between 0 and {MostParts}");
        if (parsed.GetValue(years) is { } many && !(many is >= 0 and <= 100)) throw new UsageFault("--repair-years lies between 0 and 100");
        return new LineSpan
        {
            MayDivide = true,
            Fibre = glass,
            Length = far,
            Attenuation = AttenuationOf(parsed, standards)
                ?? glass.Attenuation ?? throw new UsageFault($"the loss of {kind} is not known; state it with --loss"),
            MeasuredLoss = MeasuredOf(parsed, standards, far),
            MeasuredDispersion = DispersionOf(parsed),
            Connectors = parsed.GetValue(connectors),
            ConnectorLoss = Stated(parsed, connectorLoss, standards.LineValue("connector", "loss")),
            Splices = parsed.GetValue(splices),
            SpliceLoss = Stated(parsed, spliceLoss, standards.LineValue("splice", "loss")),
            Ageing = QuantityOptions.Loss(parsed, ageing) ?? default,
            Repair = LineMargins.Repair(standards, far, parsed.GetValue(years) ?? 0),
        };
    }

    private Known<Attenuation>? AttenuationOf(ParseResult parsed, StandardsLibrary standards)
    {
        if (QuantityOptions.Read(parsed, loss, UnitText.Attenuations, "a loss such as 0.22dB/km") is not { } value) return null;
        Require(loss, value, standards);
        return new Known<Attenuation>(Attenuation.FromDecibelsPerKilometre(value), Citation.OfPlan);
    }

    private Decibels? MeasuredOf(ParseResult parsed, StandardsLibrary standards, Length far)
    {
        if (QuantityOptions.Loss(parsed, measured) is not { } value) return null;
        Require(measured, value.Value / far.Kilometres, standards);
        return value;
    }

    /// <summary>What no glass loses is a slip.</summary>
    private static void Require(Option<string?> option, double perKilometre, StandardsLibrary standards)
    {
        var floor = standards.LineValue("span", "loss-floor").Value;
        if (perKilometre < floor - 1e-9)
            throw new UsageFault($"{option.Name} comes to {Numerals.Plain(perKilometre)} dB/km, and no glass loses less than "
                + $"{Numerals.Plain(floor)} dB/km");
    }

    private DispersionRate? DispersionOf(ParseResult parsed)
    {
        const string wanted = "a dispersion such as 17ps/nm/km";
        if (QuantityOptions.Read(parsed, dispersion, UnitText.DispersionRates, wanted) is not { } value) return null;
        return Math.Abs(value) is > 0 and < 1000
            ? DispersionRate.From(value)
            : throw new UsageFault($"{dispersion.Name} is not 0 and less than 1000 ps/nm/km either way; write {wanted}");
    }

    private LineEquipment EquipmentOf(ParseResult parsed, StandardsLibrary standards)
    {
        var usual = LineEquipment.Usual(standards);
        var before = Amplifier(parsed, preamplifier, standards, usual.Preamplifier);
        return usual with
        {
            AlwaysMultiplexes = parsed.GetValue(multiplexer) is not null,
            MultiplexerLoss = QuantityOptions.Loss(parsed, multiplexer) is { } lost
                ? new Known<Decibels>(lost, Citation.OfPlan)
                : usual.MultiplexerLoss,
            Booster = Amplifier(parsed, booster, standards, usual.Booster),
            Preamplifier = before,
            InLine = Amplifier(parsed, inLine, standards, before ?? usual.InLine),
        };
    }

    private static AmplifierModel? Amplifier(ParseResult parsed, Option<string?> option, StandardsLibrary standards, AmplifierModel? usual)
    {
        if (parsed.GetValue(option) is not { } text) return usual;
        if (text == "no") return null;
        if (standards.Amplifier(text) is { } model) return model;
        var floor = standards.LineValue("amplifier", "figure-floor").Value;
        if (UnitText.TryRead(text, UnitText.Ratios, out var figure))
            return figure >= floor && figure <= 30
                ? standards.Amplifier("EDFA")?.With(Decibels.From(figure))
                : throw new UsageFault($"{option.Name} '{text}': no amplifier of much gain is quieter than "
                    + $"{Numerals.Unit(floor, "dB")}, and none is noisier than 30 dB");
        throw new UsageFault($"{option.Name} '{text}' is neither a noise figure such as 5.5dB nor one of "
            + $"{string.Join(", ", standards.Amplifiers.Select(a => a.Name))} nor 'no'");
    }

    private static PowerLevel? Level(ParseResult parsed, Option<string?> option)
    {
        if (QuantityOptions.Read(parsed, option, UnitText.Levels, "a level such as -2dBm") is not { } value) return null;
        return value is >= -60 and <= 20 ? PowerLevel.FromDbm(value) : throw new UsageFault($"{option.Name} lies between -60dBm and 20dBm");
    }

    private static Known<Decibels> Stated(ParseResult parsed, Option<string?> option, Known<double> usual) =>
        QuantityOptions.Loss(parsed, option) is { } stated ? new Known<Decibels>(stated, Citation.OfPlan) : usual.As(Decibels.From);

    private const int MostParts = 10_000;
}
