using System.Collections.Immutable;
using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Copper;
using Lanewright.Engineering.Links;
using Lanewright.Model.Binding;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Cli.Commands;

/// <summary><c>link</c>: one link by its type, or every way to carry a rate.</summary>
internal sealed class LinkCommand
{
    /// <summary>Ways a person still reads.</summary>
    private const int MostWays = 20;

    private readonly Option<string?> type = new("--type") { Description = "interface type of the link, such as 400GBASE-DR4" };
    private readonly Option<string?> farType = new("--far-type") { Description = "interface type of the far end, when it differs" };
    private readonly Option<string?> rate = new("--rate") { Description = "instead of a type: the rate to carry, such as 400G" };
    private readonly Option<string?> medium = new("--medium") { Description = "OS2, OM4, DAC, AEC, AOC, CAT6A and so on" };
    private readonly Option<string?> length = new("--length") { Description = "length, such as 500m", Required = true };
    private readonly Option<int> connectors = new("--connectors")
    {
        Description = "mated pairs in the channel, the plugs in the modules not counted",
    };
    private readonly Option<string?> connectorLoss = new("--connector-loss") { Description = "loss of each mated pair, such as 0.35dB" };
    private readonly Option<int> splices = new("--splices") { Description = "splices in the channel" };
    private readonly Option<string?> spliceLoss = new("--splice-loss") { Description = "loss of each splice, such as 0.1dB" };
    private readonly Option<string?> reflectance = new("--reflectance") { Description = "reflectance of each mated pair, such as -45dB" };
    private readonly Option<string?> attenuation = new("--attenuation")
    {
        Description = "measured fibre attenuation, such as 0.35dB/km, or 0.35dB/km@1310nm to have it scaled",
    };
    private readonly Option<string?> measuredLoss = new("--measured-loss") { Description = "measured loss of the whole channel" };
    private readonly Option<string?> attenuator = new("--attenuator") { Description = "an attenuator in the channel, such as 5dB" };
    private readonly Option<string?> ageing = new("--ageing-margin") { Description = "loss kept back for ageing and repair" };
    private readonly Option<int?> gauge = new("--awg")
    {
        Description = "wire gauge of copper; without it the thinnest that is sold at the length",
    };
    private readonly Option<string?> cage = new("--cage")
    {
        Description = "with --rate: cage of both ends, or of the near one, such as QSFP-DD:8x50G",
    };
    private readonly Option<string?> farCage = new("--far-cage") { Description = "with --rate: cage of the far end" };
    private readonly Option<bool> drafts = new("--drafts") { Description = "with --rate: allow types whose standard is a draft" };
    private readonly Option<bool> json = CommonOptions.Json();

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var options = new LinkCommand();
        var command = new Command("link", "judge one link by its type, or list every way to carry a rate")
        {
            options.type, options.farType, options.rate, options.medium, options.length, options.connectors, options.connectorLoss,
            options.splices, options.spliceLoss, options.reflectance, options.attenuation, options.measuredLoss, options.attenuator,
            options.ageing, options.gauge, options.cage, options.farCage, options.drafts, options.json,
        };
        command.SetAction(options.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        if (parsed.GetValue(connectors) < 0 || parsed.GetValue(splices) < 0)
            throw new UsageFault("--connectors and --splices must not be below zero");
        var named = parsed.GetValue(type);
        return (named, QuantityOptions.Rate(parsed, rate)) switch
        {
            ({ } judged, null) => JudgeType(parsed, judged),
            (null, { } wanted) => ListWays(parsed, wanted),
            _ => throw new UsageFault("give either --type or --rate"),
        };
    }

    private int JudgeType(ParseResult parsed, string named)
    {
        var standards = StandardsLibrary.Shipped;
        var answer = standards.Copper(named) is { } copper
            ? Copper(parsed, standards, copper)
            : Fibre(parsed, standards, TypeOf(standards, named), TypeOf(standards, parsed.GetValue(farType) ?? named));
        if (parsed.GetValue(json))
        {
            Screen.Document(stream => AnswersJson.Write(answer, stream));
        }
        else
        {
            ChecksPrinter.Print(answer.Checks);
            var delay = Numerals.Plain(Math.Round(answer.Latency.Value.Nanoseconds, 1));
            Screen.Line(
                $"{answer.TypeName} over {answer.MediumName}: {Checks.Word(answer.Verdict)} [{Marks.Name(answer.Mark)}], "
                + $"{delay} ns one way");
        }
        return answer.Verdict == Verdict.Fail ? ExitCodes.ErrorsFound : ExitCodes.NoErrors;
    }

    private static InterfaceType TypeOf(StandardsLibrary standards, string name)
    {
        if (standards.Interface(name) is { } type) return type;
        var known = standards.InterfaceTypes.Select(t => t.Name).Concat(standards.CopperTypes.Select(c => c.Name));
        throw new UsageFault($"no interface type is called '{name}'{Spelling.DidYouMean(name, known)}");
    }

    private SingleLink Fibre(ParseResult parsed, StandardsLibrary standards, InterfaceType from, InterfaceType to)
    {
        var name = parsed.GetValue(medium) ?? (from.FibreKind == FibreKind.SingleMode ? "OS2" : "OM4");
        var fibre = standards.Fibre(name)
            ?? throw new UsageFault(
                $"{from.Name} runs on fibre, and no fibre is called '{name}'; "
                + $"known are {string.Join(", ", standards.Fibres.Select(f => f.Name))}");
        return SingleLink.OverFibre(standards, ChannelOf(parsed, standards, fibre), from, to);
    }

    private Channel ChannelOf(ParseResult parsed, StandardsLibrary standards, Fibre fibre)
    {
        var policy = PolicyBinder.Default(standards);
        var (measured, at) = Attenuation(parsed);
        return new Channel
        {
            Fibre = fibre,
            Length = QuantityOptions.RequiredLength(parsed, length),
            Connections = parsed.GetValue(connectors),
            ConnectionLoss = Stated(QuantityOptions.Loss(parsed, connectorLoss), policy.ConnectionLoss),
            Splices = parsed.GetValue(splices),
            SpliceLoss = Stated(QuantityOptions.Loss(parsed, spliceLoss), policy.SpliceLoss),
            Reflectance = QuantityOptions.Reflectance(parsed, reflectance) is { } r ? new Known<Decibels>(r, Citation.OfPlan) : null,
            Attenuation = measured,
            AttenuationAt = at,
            MeasuredLoss = QuantityOptions.Loss(parsed, measuredLoss),
            Attenuator = QuantityOptions.Loss(parsed, attenuator) ?? default,
            AgeingMargin = QuantityOptions.Loss(parsed, ageing) ?? default,
        };
    }

    private static Known<Decibels> Stated(Decibels? stated, Known<Decibels> usual) =>
        stated is { } value ? new Known<Decibels>(value, Citation.OfPlan) : usual;

    private (Known<Attenuation>? Measured, Wavelength? At) Attenuation(ParseResult parsed)
    {
        if (parsed.GetValue(attenuation) is not { } text) return (null, null);
        return UnitText.TryReadAttenuation(text, out var value, out var at)
            ? (new Known<Attenuation>(value, Citation.OfPlan), at)
            : throw new UsageFault($"--attenuation '{text}' does not read as a value; write 0.35dB/km or 0.35dB/km@1310nm");
    }

    private SingleLink Copper(ParseResult parsed, StandardsLibrary standards, CopperType copper)
    {
        var name = parsed.GetValue(medium) ?? (copper.IsTwistedPair ? "CAT6A" : "DAC");
        var metres = QuantityOptions.RequiredLength(parsed, length);
        if (copper.IsTwistedPair)
        {
            return name == "CAT6A"
                ? SingleLink.OverTwistedPair(standards, copper, metres)
                : throw new UsageFault($"{copper.Name} runs over CAT6A, not over '{name}'");
        }
        if (name != "DAC") throw new UsageFault($"{copper.Name} runs over DAC, not over '{name}'");
        var limits = PolicyBinder.Default(standards).CopperLimits;
        var wire = parsed.GetValue(gauge) is { } stated
            ? new WireGauge(stated)
            : WireGauge.WorstSold(standards, CatalogueBinder.Shipped, copper, metres);
        return SingleLink.OverTwinax(standards, copper, wire, metres, limits);
    }

    private int ListWays(ParseResult parsed, BitRate wanted)
    {
        var standards = StandardsLibrary.Shipped;
        var policy = PolicyBinder.Default(standards) with
        {
            AllowsDrafts = parsed.GetValue(drafts),
            AgeingMargin = QuantityOptions.Loss(parsed, ageing) ?? default,
        };
        var question = new RateQuestion(new FinderContext(standards, CatalogueBinder.Shipped, policy), Statement(parsed, wanted));
        var near = parsed.GetValue(cage) is { } c ? CageOf(standards, c, wanted) : null;
        var far = parsed.GetValue(farCage) is { } f ? CageOf(standards, f, wanted) : null;
        if (far is not null && near is null) throw new UsageFault("--far-cage needs --cage");
        var candidates = question.Answer(near, far);
        if (parsed.GetValue(json)) Screen.Document(stream => AnswersJson.Write(candidates, stream));
        else if (candidates.IsEmpty) Screen.Line($"no way of the shipped catalogue carries {wanted}" + OverWhat(parsed));
        else Print(candidates);
        return candidates.Any(s => s.Verdict != Verdict.Fail) ? ExitCodes.NoErrors : ExitCodes.ErrorsFound;
    }

    private string OverWhat(ParseResult parsed) =>
        (parsed.GetValue(medium) is { } name ? " over " + name : "")
        + (parsed.GetValue(cage) is { } text ? $" in a {text} cage" : "")
        + "; 'lanewright catalogue' lists what there is";

    private Model.Links.LinkStatement Statement(ParseResult parsed, BitRate wanted)
    {
        var name = parsed.GetValue(medium);
        if (name is not null && !PlanLanguage.Media.Contains(name))
            throw new UsageFault(
                $"no medium is called '{name}'{Spelling.DidYouMean(name, PlanLanguage.Media)}; "
                + $"known are {string.Join(", ", PlanLanguage.Media)}");
        return RateQuestion.StatementFor(wanted) with
        {
            Media = name is null ? [] : [name],
            Length = QuantityOptions.Length(parsed, length),
            Connections = parsed.GetValue(connectors),
            ConnectionLoss = QuantityOptions.Loss(parsed, connectorLoss),
            Splices = parsed.GetValue(splices),
            SpliceLoss = QuantityOptions.Loss(parsed, spliceLoss),
            Reflectance = QuantityOptions.Reflectance(parsed, reflectance),
            Attenuation = Attenuation(parsed).Measured?.Value,
            AttenuationAt = Attenuation(parsed).At,
            MeasuredLoss = QuantityOptions.Loss(parsed, measuredLoss),
            Attenuator = QuantityOptions.Loss(parsed, attenuator),
        };
    }

    private static CageModel CageOf(StandardsLibrary standards, string text, BitRate wanted)
    {
        var parts = text.Split(':');
        var formFactor = standards.FormFactor(parts[0])
            ?? throw new UsageFault(
                $"no form factor is called '{parts[0]}'{Spelling.DidYouMean(parts[0], standards.FormFactors.Select(f => f.Name))}");
        if (parts.Length == 1) return RateQuestion.CageOf(standards, formFactor, formFactor.Lanes, standards.SignalNames, wanted);
        var modes = standards.CageModes(parts[1]);
        if (modes.IsEmpty)
            throw new UsageFault($"no set of cage lanes is called '{parts[1]}'; known are {string.Join(", ", standards.CageNames)}");
        var signals = modes.Where(m => m.Possible).Select(m => m.Signal).ToHashSet();
        var names = standards.SignalNames.Where(n => standards.Signal(n) is { } signal && signals.Contains(signal));
        Numerals.TryWhole(parts[1].Split('x')[0], out var lanes);
        return RateQuestion.CageOf(standards, formFactor, (int)lanes, names, wanted);
    }

    private static void Print(ImmutableArray<Solution> candidates)
    {
        var best = candidates.FirstOrDefault();
        Screen.Print(
            ["way", "type", "medium", "verdict", "mark", "CU", "W", "lost by"],
            candidates.Take(MostWays).Select(s => (IReadOnlyList<string>)
            [
                s.Name, s.TypeName, s.MediumName, Checks.Word(s.Verdict), Marks.Name(s.Mark), s.Price.ToString(),
                Numerals.Plain(s.Power.Value), LostBy.Reason(s, best, "CU"),
            ]));
        if (candidates.Length > MostWays) Screen.Line($"and {candidates.Length - MostWays} more ways; --json lists them all");
        Screen.Line("prices are invented placeholders of the shipped catalogue; a plan with a catalogue of its own uses real ones");
    }
}
