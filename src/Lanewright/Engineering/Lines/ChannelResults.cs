using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Lines;

/// <summary>Puts the figures of each channel together.</summary>
internal sealed class ChannelResults
{
    private readonly LineQuestion question;
    private readonly WavelengthType type;
    private readonly CoherentTrial trial;
    private readonly CombState state;
    private readonly LinePenalties penalties;
    private readonly double perReference;
    private readonly SymbolSet? symbols;
    private readonly double? ownNoise;
    private readonly CodeMargin? code;
    private readonly Decibels? shannon;
    private readonly bool isOneSpan;

    public ChannelResults(
        LineQuestion question, WavelengthType type, CoherentTrial trial, CombState state, LinePenalties penalties, Frequency width)
    {
        (this.question, this.type, this.trial, this.state, this.penalties) = (question, type, trial, state, penalties);
        perReference = width.Hertz / trial.Reference.Hertz;
        symbols = question.Standards.Symbols(type.Modulation);
        if (symbols is not null && type.ErrorLimit is { } errors && type.RequiredOsnr is { } required)
            ownNoise = 1 / new SymbolErrors(symbols).OwnRatio(errors.Value, required.Value.Ratio / perReference);
        code = type.ErrorLimit is { } limit ? new CodeMargin(limit.Value) : null;
        shannon = ChannelBounds.Shannon(type.Rate, width);
        isOneSpan = question.Spans.Length == 1;
    }

    /// <summary>All channels.</summary>
    public ImmutableArray<LineChannel> All() => [.. Enumerable.Range(0, question.Channels.Channels.Length).Select(Of)];

    private LineChannel Of(int channel)
    {
        var noise = state.Noise(channel);
        var inReference = Decibels.OfRatio(1 / noise);
        var gsnr = Decibels.OfRatio(1 / (noise * perReference));
        var penalty = trial.PenaltyOf(state, channel);
        var required = type.RequiredOsnr?.Value;
        var hasAmplifiers = state.Amplified(channel) > 0;
        // A penalty is told in signal over noise, and so a factor of the noise: where the margin is nothing, errors are at the limit.
        var errors = symbols is not null && ownNoise is { } own
            ? new SymbolErrors(symbols).At(1 / (own + (noise * penalty.Ratio * perReference)))
            : (double?)null;
        return new LineChannel
        {
            Frequency = question.Channels.Channels[channel],
            Received = state.Received(channel),
            Osnr = hasAmplifiers ? Decibels.OfRatio(1 / state.Amplified(channel)) : null,
            OverNonlinear = Decibels.OfRatio(perReference / state.Nonlinear(channel)),
            Gsnr = gsnr,
            GsnrInReference = inReference,
            Required = required,
            Penalty = penalty,
            Margin = inReference - penalty - required,
            ExpectedMargin = Expected(channel, noise) - penalty - required,
            Dispersion = penalties.Dispersions[channel],
            ErrorsBeforeCode = errors,
            CodeMargin = errors is { } wrong ? code?.Of(wrong) : null,
            OverShannon = gsnr - shannon,
        };
    }

    /// <summary>Stretches up to which the noise of all, each by itself, was held against propagated symbols.</summary>
    private const int MostHeld = 10;

    /// <summary>Signal over noise with symbols as they are. The correction is known for one span alone; over several, symbols of a few
    /// levels leave their noise out of step, so that it adds as powers.</summary>
    private Decibels? Expected(int channel, double noise)
    {
        if (symbols?.ExcessKurtosis is not { } kurtosis) return null;
        if (!isOneSpan && trial.Stretches is 1 or > MostHeld) return null;
        var expected = isOneSpan
            ? CoherentTrial.ExpectedNonlinear(state, channel, kurtosis.Value)
            : trial.ApartNonlinear(state, channel);
        return Decibels.OfRatio(1 / (noise - ((state.Nonlinear(channel) - expected) / perReference)));
    }
}
