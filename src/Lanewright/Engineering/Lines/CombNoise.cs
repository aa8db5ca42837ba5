using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>What a stretch of fibre between two amplifiers does to a comb: loss, Raman tilt and nonlinear noise. Pieces of one kind of
/// glass count as one; where kinds differ their noises add, each at the power that reaches it.</summary>
internal sealed class CombNoise
{
    private readonly double ramanPerWatt;
    private readonly ImmutableArray<(NonlinearNoise Noise, double Left, double Given)> pieces;
    private readonly Length length;

    /// <summary>Takes the spans, each with its glass, and the comb.</summary>
    public CombNoise(ImmutableArray<LineSpan> spans, ImmutableArray<GlassSpan> glass, ChannelPlan comb, Frequency width)
    {
        Loss = spans.Aggregate(default(Decibels), (sum, span) => sum + span.Loss);
        var found = ImmutableArray.CreateBuilder<(NonlinearNoise, double, double)>();
        var before = default(Decibels);
        length = Length.FromMetres(glass.Sum(g => g.Length.Metres));
        var isAlike = glass.All(g => g with { Length = glass[0].Length } == glass[0]);
        for (var piece = 0; piece < (isAlike ? 1 : glass.Length); piece++)
        {
            var here = isAlike ? glass[0] with { Length = length } : glass[piece];
            var left = 1 / before.Ratio;
            // A single channel has no other to give power to.
            var slope = comb.Channels.Length > 1 ? (spans[piece].Fibre.RamanSlope?.Value ?? 0) * left : 0;
            var noise = new NonlinearNoise(here, comb.Channels.Length, comb.Spacing, width);
            found.Add((noise, left, slope * GivenWhileMixing(here).Kilometres));
            ramanPerWatt += slope * here.Effective.Kilometres;
            before += spans[piece].Loss;
        }
        pieces = found.ToImmutable();
    }

    /// <summary>Loss of the stretch.</summary>
    public Decibels Loss { get; }

    /// <summary>Nonlinear noise over signal of each channel against the square of the mean launch, for a launch that rises by a step from
    /// channel to channel: all of it, and the channel's own. Raman scattering takes from high channels while they mix, and gives to low
    /// ones: with the total power times the third value as the exponent, all falls by a power of e.</summary>
    public (double[] Plain, double[] Own, double[] FallPerWatt) For(Decibels step, double[] ratio)
    {
        var (plain, own, fall) = (new double[ratio.Length], new double[ratio.Length], new double[ratio.Length]);
        foreach (var (noise, left, given) in pieces)
        {
            var (cross, leaning) = noise.CrossTilted(step);
            for (var i = 0; i < ratio.Length; i++)
            {
                var power = Squares.Of(ratio[i] * left);
                own[i] += noise.Own * power;
                plain[i] += (noise.Own + cross[i]) * power;
                fall[i] += ((noise.Own * noise.Terahertz(i)) + leaning[i]) * power * given;
            }
        }
        for (var i = 0; i < ratio.Length; i++) fall[i] /= plain[i];
        return (plain, own, fall);
    }

    /// <summary>How much more so many stretches like this make than their sum; of unlike pieces the one that says most counts.</summary>
    public double InStep(int stretches) => pieces.Max(p => p.Noise.InStep(stretches, length));

    /// <summary>Length over which full power would take as much from light, or give it, as is missing while it mixes: twice the mean of the
    /// effective length so far, by the square of the power there. The closed form with Raman scattering (Semrau, Killey, Bayvel, JLT 2019)
    /// comes to the same for neighbours in long spans, to first order.</summary>
    private static Length GivenWhileMixing(GlassSpan glass)
    {
        var left = Math.Exp(-glass.Alpha * glass.Length.Metres);
        return Length.FromMetres(2 / glass.Alpha * (1 - (2.0 / 3 * (1 - (left * left * left)) / (1 - (left * left)))));
    }

    /// <summary>Raman tilt at a total power.</summary>
    public RamanTilt Tilt(double totalWatts, Frequency width) => new(ramanPerWatt, totalWatts, Length.FromKilometres(1), width);
}
