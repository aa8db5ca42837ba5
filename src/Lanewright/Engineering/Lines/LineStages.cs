using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>The way of the channel with the least margin, point by point: power and signal over noise.</summary>
internal static class LineStages
{
    /// <summary>The points from the transmitter to the receiver.</summary>
    public static ImmutableArray<LineStage> Of(
        LineQuestion question, CoherentTrial trial, CombState state, ImmutableArray<LineChannel> channels)
    {
        var worst = channels.Select((c, i) => (Margin: c.Margin ?? c.GsnrInReference, Index: i)).MinBy(c => c.Margin).Index;
        var stages = ImmutableArray.CreateBuilder<LineStage>();
        var amplifiers = new Queue<LineAmplifier>(state.Amplifiers);
        var (at, noise, level) = (default(Length), state.TransmitterNoise, trial.Transmitter);
        // How far the channel is from the mean of the comb: by a tilted launch, then by Raman scattering.
        var (launched, shift) = (Decibels.OfRatio(state.Shape.Ratio(worst)), default(Decibels));
        var hops = new Queue<RamanTilt>(state.HopTilts);
        var glass = NoiseOfSpans(question, state, worst);
        Add("transmitter");
        if (question.Multiplexes)
        {
            level -= question.MultiplexerLoss;
            Add("multiplexer");
        }
        if (trial.HasBooster) Amplify();
        shift = launched;
        if (trial.HasBooster) stages[^1] = stages[^1] with { Level = level + shift };
        for (var span = 0; span < question.Spans.Length; span++)
        {
            at += question.Spans[span].Length;
            level -= question.Spans[span].Loss;
            noise += glass[span];
            var isHopEnd = span == question.Spans.Length - 1 || (state.HopTilts.Count > 1 && !question.Spans[span].GoesOn);
            if (isHopEnd && hops.TryDequeue(out var tilt)) shift += tilt.At(trial.Offset(worst));
            Add(question.Spans[span].Name.Length > 0 ? question.Spans[span].Name : "span");
            if (!isHopEnd || !amplifiers.TryPeek(out var next) || next.Place == "preamplifier") continue;
            Amplify();
            shift = launched;
            stages[^1] = stages[^1] with { Level = level + shift };
        }
        if (trial.HasPreamplifier) Amplify();
        if (question.Multiplexes)
        {
            level -= question.MultiplexerLoss;
            Add("demultiplexer");
        }
        level -= state.ReceiverPad;
        noise = state.Noise(worst);
        Add("receiver");
        return stages.ToImmutable();

        void Add(string what) => stages.Add(new LineStage(what, at, level + shift, noise > 0 ? Decibels.OfRatio(1 / noise) : null));

        void Amplify()
        {
            var amplifier = amplifiers.Dequeue();
            if (amplifier.PadBefore.Value > 0)
            {
                level -= amplifier.PadBefore;
                Add(LineStage.Pad);
            }
            noise += Added(amplifier, amplifier.Input + shift, question.Channels.Channels[worst], trial.Reference);
            level = amplifier.Output;
            Add(amplifier.Place);
        }
    }

    private static double Added(LineAmplifier amplifier, PowerLevel input, Frequency channel, Frequency reference) =>
        amplifier.Model.Figure is { } figure ? AmplifierNoise.AtInput(figure.Value, amplifier.Gain, channel, reference) / input.Watts
        : amplifier.Model.Mask is { } mask ? 1 / AmplifierNoise.ByMask(mask.Value, input).Ratio
        : 0;

    /// <summary>The way of light without amplifiers and so without noise of theirs; empty where the transmitter or the loss is not
    /// known.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="transmitter">The lowest level of a transmitter.</param>
    /// <param name="fibre">What the spans lose together.</param>
    /// <param name="pad">A pad before the receiver.</param>
    /// <param name="multiplexes">Whether channels share the fibre.</param>
    public static ImmutableArray<LineStage> OfLevels(
        LineQuestion question, PowerLevel? transmitter, Decibels? fibre, Decibels pad, bool multiplexes)
    {
        if (transmitter is not { } level || fibre is not { } loss) return [];
        var at = default(Length);
        var stages = ImmutableArray.CreateBuilder<LineStage>();
        stages.Add(new LineStage("transmitter", at, level, null));
        if (multiplexes) stages.Add(new LineStage("multiplexer", at, level -= question.MultiplexerLoss, null));
        foreach (var span in question.Spans)
        {
            at += span.Length;
            level -= loss * (span.Loss.Value / question.SpanLoss.Value);
            stages.Add(new LineStage(span.Name.Length > 0 ? span.Name : "span", at, level, null));
        }
        if (multiplexes) stages.Add(new LineStage("demultiplexer", at, level -= question.MultiplexerLoss, null));
        stages.Add(new LineStage("receiver", at, level - pad, null));
        return stages.ToImmutable();
    }

    /// <summary>Noise of the glass in the reference width, span by span: of each stretch between amplifiers what it makes, divided over its
    /// spans by the squares of nonlinearity, effective length and the light that reaches them.</summary>
    private static double[] NoiseOfSpans(LineQuestion question, CombState state, int channel)
    {
        var runs = Stretches.Of(question.Spans, state.HopTilts.Count > 1 ? LineScheme.InLine : LineScheme.BoosterAndPreamplifier);
        return [.. runs.SelectMany((run, hop) => Shares(run).Select(share => share * state.Shape.Plain(hop, channel, state.LaunchWatts)
            / state.WidthPerReference))];
    }

    private static IEnumerable<double> Shares(ImmutableArray<LineSpan> run)
    {
        var (left, noise) = (default(Decibels), new double[run.Length]);
        for (var span = 0; span < run.Length; span++)
        {
            if (run[span].Glass is { } glass)
                noise[span] = Squares.Of(glass.GammaPerWattKm * glass.Effective.Kilometres / left.Ratio);
            left += run[span].Loss;
        }
        var all = noise.Sum();
        return noise.Select(n => all > 0 ? n / all : 0);
    }
}
