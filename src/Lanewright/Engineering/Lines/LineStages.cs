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
        Add("transmitter");
        if (question.Multiplexes)
        {
            level -= question.MultiplexerLoss;
            Add("multiplexer");
        }
        if (trial.HasBooster) Amplify();
        for (var span = 0; span < question.Spans.Length; span++)
        {
            at += question.Spans[span].Length;
            level -= question.Spans[span].Loss;
            noise += state.NonlinearInReference(worst) / question.Spans.Length;
            Add(question.Spans[span].Name.Length > 0 ? question.Spans[span].Name : "span");
            if (span < question.Spans.Length - 1 && amplifiers.TryPeek(out var next) && next.Place != "preamplifier") Amplify();
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

        void Add(string what) => stages.Add(new LineStage(what, at, level, noise > 0 ? Decibels.OfRatio(1 / noise) : null));

        void Amplify()
        {
            var amplifier = amplifiers.Dequeue();
            noise += amplifier.Model.Figure is { } figure
                ? AmplifierNoise.AtInput(figure.Value, amplifier.Gain, question.Channels.Channels[worst], trial.Reference)
                    / amplifier.Input.Watts
                : amplifier.Model.Mask is { } mask ? 1 / AmplifierNoise.ByMask(mask.Value, amplifier.Input).Ratio : 0;
            level = amplifier.Output;
            Add(amplifier.Place);
        }
    }
}
