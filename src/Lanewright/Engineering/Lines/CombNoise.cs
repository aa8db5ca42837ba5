using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>What a stretch of fibre between two amplifiers does to a comb: loss, Raman tilt and nonlinear noise. Pieces of one kind of
/// glass count as one; where kinds differ their noises add, each at the power that reaches it.</summary>
internal sealed class CombNoise
{
    private readonly double ramanPerWatt;
    private readonly double[] plain;
    private readonly double[] own;

    /// <summary>Takes the spans, each with its glass, and the comb.</summary>
    public CombNoise(ImmutableArray<LineSpan> spans, ImmutableArray<GlassSpan> glass, ChannelPlan comb, Frequency width)
    {
        Loss = spans.Aggregate(default(Decibels), (sum, span) => sum + span.Loss);
        var channels = comb.Channels.Length;
        plain = new double[channels];
        own = new double[channels];
        var before = default(Decibels);
        var isAlike = glass.All(g => g with { Length = glass[0].Length } == glass[0]);
        for (var piece = 0; piece < (isAlike ? 1 : glass.Length); piece++)
        {
            var here = isAlike ? glass[0] with { Length = Length.FromMetres(glass.Sum(g => g.Length.Metres)) } : glass[piece];
            var left = 1 / before.Ratio;
            var noise = new NonlinearNoise(here, channels, comb.Spacing, width);
            for (var i = 0; i < channels; i++)
            {
                plain[i] += noise.Plain(i) * left * left;
                own[i] += noise.Own * left * left;
            }
            ramanPerWatt += (spans[piece].Fibre.RamanSlope?.Value ?? 0) * here.Effective.Kilometres * left;
            before += spans[piece].Loss;
        }
    }

    /// <summary>Loss of the stretch.</summary>
    public Decibels Loss { get; }

    /// <summary>Nonlinear noise over signal in the width of a channel at a launch in watts, by the plain model.</summary>
    public double Plain(int channel, double watts) => plain[channel] * watts * watts;

    /// <summary>The same with the part of the neighbours scaled.</summary>
    public double Expected(int channel, double watts, double crossShare) =>
        (own[channel] + ((plain[channel] - own[channel]) * crossShare)) * watts * watts;

    /// <summary>Raman tilt at a total power.</summary>
    public RamanTilt Tilt(double totalWatts, Frequency width) => new(ramanPerWatt, totalWatts, Length.FromKilometres(1), width);
}
