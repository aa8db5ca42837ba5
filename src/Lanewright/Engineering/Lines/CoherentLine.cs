using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Lines;

/// <summary>Designs a coherent line in one scheme and holds it against every limit of the type and of the amplifiers.</summary>
public static class CoherentLine
{
    /// <summary>The design with the best launch, or with the launch that is asked for.</summary>
    /// <param name="question">What is asked, with the spans that the scheme goes over.</param>
    /// <param name="type">The type.</param>
    /// <param name="scheme">One of the coherent schemes.</param>
    public static LineDesign Of(LineQuestion question, WavelengthType type, LineScheme scheme)
    {
        var missing = Missing(question, type, scheme);
        if (missing.Length > 0) return Without(question, type, scheme, missing);
        var transmitter = question.Transmitter ?? type.TxMin?.Value ?? default;
        var width = Frequency.FromHertz(type.Baud?.Value.SymbolsPerSecond ?? 0);
        var amplifiers = Amplifiers(question, scheme);
        var penalties = new LinePenalties(question, type, amplifiers);
        var trial = new CoherentTrial(question, type, scheme, Hops(question, scheme, width), penalties, transmitter, width);
        var state = trial.Best();
        var channels = new ChannelResults(question, type, trial, state, penalties, width).All();
        var checks = new CoherentChecks(question, type, scheme, trial, state, channels).All().Concat(penalties.Checks());
        return new LineDesign
        {
            Scheme = scheme,
            TypeName = type.Name,
            Checks = [.. checks, .. LaunchChecks(question, scheme, transmitter)],
            LaunchTilt = state.Shape.Tilt,
            Channels = channels,
            Latency = LatencyOf(question),
            Spans = question.Spans,
            Amplifiers = state.Amplifiers,
            Launch = trial.HasBooster ? state.Launch : null,
            Total = (trial.HasBooster ? state.Launch : transmitter - question.MultiplexerLoss).OfAll(question.Channels.Channels.Length),
            ReceiverPad = state.ReceiverPad,
            Multiplexes = question.Multiplexes,
            Stages = LineStages.Of(question, trial, state, channels),
            RamanTilt = state.Tilt,
        };
    }

    /// <summary>A stated launch that the transmitters alone would have to meet.</summary>
    private static IEnumerable<Check> LaunchChecks(LineQuestion question, LineScheme scheme, PowerLevel transmitter)
    {
        if (question.Launch is not { } launch || scheme is not (LineScheme.Coherent or LineScheme.Preamplifier)) yield break;
        if (Math.Abs((launch - (transmitter - question.MultiplexerLoss)).Value) > Same)
            yield return Check.Of(LineCheckNames.Amplifier, false, null, LaunchUnmet);
    }

    /// <summary>Delay of the fibre in one direction; null when a group index is not known.</summary>
    public static Known<Duration>? LatencyOf(LineQuestion question)
    {
        Known<Duration>? sum = new Known<Duration>(default, Citation.OfPlan);
        foreach (var span in question.Spans)
        {
            if (LatencyOf(span) is not { } here || sum is not { } so) return null;
            sum = new Known<Duration>(so.Value + here.Value, here.Source.Mark > so.Source.Mark ? here.Source : so.Source);
        }
        return sum;
    }

    /// <summary>Delay of a span in one direction; null when its group index is not known.</summary>
    public static Known<Duration>? LatencyOf(LineSpan span) => span.Fibre.GroupIndex?
        .As(index => Duration.FromNanoseconds(index * span.Length.Metres * NanosecondsPerMetre));

    private static double NanosecondsPerMetre => 1e9 / (Frequency.Of(GlassSpan.Usual).Hertz * GlassSpan.Usual.Nanometres / 1e9);

    /// <summary>What has to be known before anything can be reckoned; empty when all is.</summary>
    private static string Missing(LineQuestion question, WavelengthType type, LineScheme scheme)
    {
        if (question.Transmitter is null && type.TxMin is null) return $"the level of a {type.Name} transmitter is not known; state it";
        if (type.Baud is null) return $"the symbol rate of {type.Name} is not known";
        if (question.Spans.FirstOrDefault(s => s.Glass is null) is { } span)
            return $"what light does to itself in {span.Fibre.Name} is not known";
        if (question.Channels.Channels.Length > 1 && question.Spans.FirstOrDefault(s => s.Fibre.RamanSlope is null) is { } dark)
            return $"how much power moves between channels in {dark.Fibre.Name} is not known";
        if (Stretches.MostLoss(question.Spans, scheme).Value > NoLightLeft) return Dark;
        var have = question.Equipment;
        if (scheme is LineScheme.Booster or LineScheme.BoosterAndPreamplifier or LineScheme.InLine && have.Booster is null)
            return NoBooster;
        if (scheme is LineScheme.Preamplifier or LineScheme.BoosterAndPreamplifier or LineScheme.InLine && have.Preamplifier is null)
            return NoPreamplifier;
        return scheme == LineScheme.InLine && have.InLine is null ? NoInLine : "";
    }

    /// <summary>A loss after which less than a photon in a day is left of any launch.</summary>
    private const double NoLightLeft = 250;

    private const string Dark = "no light is left behind a span of so much loss";
    /// <summary>Levels that differ by less are the same setting.</summary>
    private const double Same = 0.05;

    private const string LaunchUnmet = "a launch is stated that only a booster can set";
    private const string NoBooster = "there is no booster to use";
    private const string NoPreamplifier = "there is no preamplifier to use";
    private const string NoInLine = "there are no in-line amplifiers to use";

    private static LineDesign Without(LineQuestion question, WavelengthType type, LineScheme scheme, string missing) => new()
    {
        Scheme = scheme,
        TypeName = type.Name,
        IsBuilt = false,
        Checks =
        [
            missing is NoBooster or NoPreamplifier or NoInLine or Dark
                ? Check.Of(LineCheckNames.Amplifier, false, null, missing)
                : Check.Unknown(LineCheckNames.Type, missing, type.Definition),
        ],
        Channels = [.. question.Channels.Channels.Select(f => new LineChannel { Frequency = f, Required = type.RequiredOsnr?.Value })],
        Latency = LatencyOf(question),
        Spans = question.Spans,
        Multiplexes = question.Multiplexes,
    };

    /// <summary>The amplifiers of a scheme from the transmitter on, by their models.</summary>
    private static ImmutableArray<AmplifierModel> Amplifiers(LineQuestion question, LineScheme scheme)
    {
        var have = question.Equipment;
        var between = Enumerable.Repeat(have.InLine, Stretches.Of(question.Spans, scheme).Length - 1);
        IEnumerable<AmplifierModel?> all = scheme switch
        {
            LineScheme.Booster => [have.Booster],
            LineScheme.Preamplifier => [have.Preamplifier],
            LineScheme.BoosterAndPreamplifier or LineScheme.InLine => [have.Booster, .. between, have.Preamplifier],
            _ => [],
        };
        return [.. all.OfType<AmplifierModel>()];
    }

    /// <summary>Stretches between amplifiers; alike ones of one span are reckoned once.</summary>
    private static ImmutableArray<CombNoise> Hops(LineQuestion question, LineScheme scheme, Frequency width)
    {
        var known = new Dictionary<LineSpan, CombNoise>();
        var hops = ImmutableArray.CreateBuilder<CombNoise>();
        foreach (var run in Stretches.Of(question.Spans, scheme))
        {
            var key = run[0] with { Name = "" };
            if (run.Length > 1 || !known.TryGetValue(key, out var hop))
            {
                hop = new(run, [.. run.Select(s => s.Glass).OfType<GlassSpan>()], question.Channels, width);
                if (run.Length == 1) known[key] = hop;
            }
            hops.Add(hop);
        }
        return hops.ToImmutable();
    }
}
