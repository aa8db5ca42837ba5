using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>What a stretch of fibre between two amplifiers does to a comb: loss, Raman tilt and nonlinear noise. Pieces of one kind of
/// glass count as one; where kinds differ their noises add, each at the power that reaches it.</summary>
internal sealed class CombNoise
{
    private readonly double ramanPerWatt;
    private readonly ImmutableArray<(NonlinearNoise Noise, double Left)> pieces;

    /// <summary>Takes the spans, each with its glass, and the comb.</summary>
    public CombNoise(ImmutableArray<LineSpan> spans, ImmutableArray<GlassSpan> glass, ChannelPlan comb, Frequency width)
    {
        Loss = spans.Aggregate(default(Decibels), (sum, span) => sum + span.Loss);
        var found = ImmutableArray.CreateBuilder<(NonlinearNoise, double)>();
        var before = default(Decibels);
        var isAlike = glass.All(g => g with { Length = glass[0].Length } == glass[0]);
        for (var piece = 0; piece < (isAlike ? 1 : glass.Length); piece++)
        {
            var here = isAlike ? glass[0] with { Length = Length.FromMetres(glass.Sum(g => g.Length.Metres)) } : glass[piece];
            var left = 1 / before.Ratio;
            found.Add((new NonlinearNoise(here, comb.Channels.Length, comb.Spacing, width), left));
            ramanPerWatt += (spans[piece].Fibre.RamanSlope?.Value ?? 0) * here.Effective.Kilometres * left;
            before += spans[piece].Loss;
        }
        pieces = found.ToImmutable();
    }

    /// <summary>Loss of the stretch.</summary>
    public Decibels Loss { get; }

    /// <summary>Nonlinear noise over signal of each channel against the square of the mean launch, all of it and the channel's own, for a
    /// launch that rises by a step from channel to channel.</summary>
    public (double[] Plain, double[] Own) For(Decibels step, double[] ratio)
    {
        var (plain, own) = (new double[ratio.Length], new double[ratio.Length]);
        foreach (var (noise, left) in pieces)
        {
            var cross = step.Value == 0 ? null : noise.CrossTilted(step);
            for (var i = 0; i < ratio.Length; i++)
            {
                var power = Squares.Of(ratio[i] * left);
                own[i] += noise.Own * power;
                plain[i] += (noise.Own + (cross is null ? noise.Cross(i) : cross[i])) * power;
            }
        }
        return (plain, own);
    }

    /// <summary>Raman tilt at a total power.</summary>
    public RamanTilt Tilt(double totalWatts, Frequency width) => new(ramanPerWatt, totalWatts, Length.FromKilometres(1), width);
}
