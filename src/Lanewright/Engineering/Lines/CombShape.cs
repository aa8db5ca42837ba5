using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>How the launch is spread over a comb: flat, or rising by the same ratio from channel to channel, with the total unchanged; and
/// what the glass of each stretch makes of it, against the square of the mean launch in watts.</summary>
internal sealed class CombShape
{
    private readonly double[] ratio;
    private readonly double[][] plain;
    private readonly double[][] own;
    private readonly double[][] fall;
    private readonly double[] inStep;

    /// <summary>What amplifiers are set in; a smaller tilt is none. In dB.</summary>
    public const double LeastTilt = 0.2;

    /// <summary>Takes the tilt from the lowest to the highest channel, and the stretches.</summary>
    public CombShape(Decibels tilt, int channels, IReadOnlyList<CombNoise> hops)
    {
        Tilt = tilt;
        var step = channels > 1 ? tilt * (1.0 / (channels - 1)) : default;
        ratio = new double[channels];
        for (var i = 0; i < channels; i++) ratio[i] = (step * i).Ratio;
        var mean = ratio.Sum() / channels;
        for (var i = 0; i < channels; i++) ratio[i] /= mean;
        Levels = [.. ratio.Select(r => Decibels.OfRatio(r).Value)];
        (plain, own, fall) = (new double[hops.Count][], new double[hops.Count][], new double[hops.Count][]);
        inStep = new double[hops.Count];
        for (var hop = 0; hop < hops.Count; hop++)
        {
            var known = hop;
            // Alike stretches are one object, and reckoned once.
            for (var before = 0; before < hop && known == hop; before++) known = ReferenceEquals(hops[before], hops[hop]) ? before : hop;
            if (known < hop) (plain[hop], own[hop], fall[hop], inStep[hop]) = (plain[known], own[known], fall[known], inStep[known]);
            else
            {
                (plain[hop], own[hop], fall[hop]) = hops[hop].For(step, ratio);
                inStep[hop] = hops[hop].InStep(hops.Count);
                for (var i = 0; i < channels; i++) plain[hop][i] *= inStep[hop];
            }
        }
    }

    /// <summary>From the lowest to the highest channel.</summary>
    public Decibels Tilt { get; }

    /// <summary>Launch of a channel over the mean.</summary>
    public double Ratio(int channel) => ratio[channel];

    /// <summary>The same in dB.</summary>
    public ImmutableArray<double> Levels { get; }

    /// <summary>Nonlinear noise over signal in the width of a channel, by the plain model, as much of it in step with that of other
    /// stretches as of symbols like Gaussian noise.</summary>
    public double Plain(int hop, int channel, double watts) => plain[hop][channel] * Squared(hop, channel, watts);

    /// <summary>Adds the same for all channels.</summary>
    /// <param name="hop">The stretch.</param>
    /// <param name="watts">Mean launch.</param>
    /// <param name="sum">What is added to.</param>
    /// <param name="room">As many places, whose values are lost.</param>
    public void AddPlain(int hop, double watts, Span<double> sum, Span<double> room)
    {
        Exponentials.Of(2 * Math.Log(watts), -watts * ratio.Length, fall[hop], room);
        for (var i = 0; i < sum.Length; i++) sum[i] += plain[hop][i] * room[i];
    }

    /// <summary>The same as if nothing of it were in step: what stretches make one by one.</summary>
    public double Apart(int hop, int channel, double watts) => Plain(hop, channel, watts) / inStep[hop];

    /// <summary>The value of one channel with the part of the neighbours scaled, over one stretch alone.</summary>
    public double Expected(int hop, int channel, double watts, double crossShare) =>
        (own[hop][channel] + ((plain[hop][channel] - own[hop][channel]) * crossShare)) * Squared(hop, channel, watts);

    private double Squared(int hop, int channel, double watts) =>
        watts * watts * Math.Exp(-fall[hop][channel] * watts * ratio.Length);
}
