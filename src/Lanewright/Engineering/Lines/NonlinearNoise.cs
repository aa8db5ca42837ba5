using System.Runtime.Intrinsics;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>Noise that the glass itself makes from a comb of channels of one width and power: the Gaussian-noise model summed over
/// channels (Poggiolini et al., JLT 30(24) 2012 and 32(4) 2014), and its form with Raman scattering (Semrau, Killey, Bayvel, JLT 2019).
/// All values are 1/W²: noise in the width of a channel is the value times the cube of the power.</summary>
public sealed class NonlinearNoise
{
    private readonly GlassSpan span;
    private readonly double spacing;
    private readonly double width;
    private readonly double crossScale;
    private readonly double[] each;
    private readonly double[] oneSide;

    /// <summary>Takes the glass and the comb.</summary>
    /// <param name="span">The glass.</param>
    /// <param name="channels">Channels of the comb.</param>
    /// <param name="spacing">From channel to channel.</param>
    /// <param name="width">Width of a channel: its symbol rate.</param>
    public NonlinearNoise(GlassSpan span, int channels, Frequency spacing, Frequency width)
    {
        this.span = span;
        this.spacing = spacing.Hertz;
        this.width = width.Hertz;
        Channels = channels;
        var scale = 16.0 / 27 * Squares.Of(span.Gamma * span.Effective.Metres / this.width);
        var reach = Math.Abs(span.Beta2) / span.Alpha;
        Own = scale * Math.Asinh(Math.PI * Math.PI / 2 * reach * this.width * this.width) / (2 * Math.PI * reach);
        crossScale = 2 * scale / (4 * Math.PI * reach);
        each = Neighbours(Math.PI * Math.PI * reach * this.width);
        oneSide = new double[channels];
        for (var m = 1; m < channels; m++) oneSide[m] = oneSide[m - 1] + each[m];
    }

    /// <summary>Channels of the comb.</summary>
    public int Channels { get; }

    /// <summary>What a channel does to itself.</summary>
    public double Own { get; }

    /// <summary>What its neighbours do to a channel.</summary>
    public double Cross(int channel) => crossScale * (oneSide[channel] + oneSide[Channels - 1 - channel]);

    /// <summary>What neighbours do to each channel of a comb whose power rises from channel to channel by the same ratio, against the
    /// square of its own power: neighbours count by the squares of theirs.</summary>
    public double[] CrossTilted(Decibels step)
    {
        var (up, down) = (new double[Channels], new double[Channels]);
        var weight = (step * 2).Ratio;
        var (rising, falling) = (1.0, 1.0);
        for (var m = 1; m < Channels; m++)
        {
            (rising, falling) = (rising * weight, falling / weight);
            up[m] = up[m - 1] + (each[m] * rising);
            down[m] = down[m - 1] + (each[m] * falling);
        }
        var cross = new double[Channels];
        for (var i = 0; i < Channels; i++) cross[i] = crossScale * (up[Channels - 1 - i] + down[i]);
        return cross;
    }

    /// <summary>Both together.</summary>
    public double Plain(int channel) => Own + Cross(channel);

    /// <summary>The plain value with the part of the neighbours scaled for symbols that are not Gaussian. It holds for one span: over
    /// several the plain value stands. The own part is never scaled, since for QPSK that would fall below what happens.</summary>
    public double Expected(int channel, double excessKurtosis) => Own + (Cross(channel) * (1 + (5.0 / 6 * excessKurtosis)));

    /// <summary>The value when the comb's total power moves power from high to low frequencies. The span is taken as long.</summary>
    /// <param name="channel">Which.</param>
    /// <param name="each">Power of each channel.</param>
    /// <param name="ramanPerWattKmThz">Slope of the Raman gain in 1/(W km THz).</param>
    public double WithRaman(int channel, PowerLevel each, double ramanPerWattKmThz)
    {
        var shift = Channels * each.Watts * ramanPerWattKmThz * 1e-15;
        var at = From(channel);
        var phi = 3 * Math.PI * Math.PI / 2 * (span.Beta2 + (2 * Math.PI * span.Beta3 * at));
        var (first, second) = Weights(shift * at);
        var a = span.Alpha;
        var own = 4.0 / 9 * Squares.Of(span.Gamma / width) * Math.PI / (phi * 3 * a * a)
            * ((first / a * Math.Asinh(phi * width * width / (Math.PI * a)))
                + (second / (2 * a) * Math.Asinh(phi * width * width / (Math.PI * 2 * a))));
        var cross = 0.0;
        for (var other = 0; other < Channels; other++)
            if (other != channel) cross += Neighbour(at, From(other), shift);
        return own + (32.0 / 27 * Squares.Of(span.Gamma) / width * cross);
    }

    /// <summary>The launch power that leaves most signal over noise, in watts: there the amplifiers' noise is twice the glass's.</summary>
    public static double BestWatts(double amplifierNoiseWatts, double noisePerCube) => Math.Cbrt(amplifierNoiseWatts / (2 * noisePerCube));

    /// <summary>Signal over all noise at a launch power, as a plain ratio.</summary>
    public static double Ratio(double watts, double amplifierNoiseWatts, double noisePerCube) =>
        watts / (amplifierNoiseWatts + (noisePerCube * watts * watts * watts));

    private double Neighbour(double at, double there, double shift)
    {
        var a = span.Alpha;
        var between = 2 * Math.PI * Math.PI * (there - at) * (span.Beta2 + (Math.PI * span.Beta3 * (at + there)));
        var (near, far) = Weights(shift * there);
        return ((near / a * Math.Atan(between * width / a)) + (far / (2 * a) * Math.Atan(between * width / (2 * a))))
            / (between * 3 * a * a);
    }

    private double From(int channel) => (channel - ((Channels - 1) / 2.0)) * spacing;

    private (double First, double Second) Weights(double shift)
    {
        var a = span.Alpha;
        var tilted = Squares.Of((2 * a) - shift);
        return (tilted - (a * a), (4 * a * a) - tilted);
    }

    /// <summary>What a neighbour one, two and so on channels away does: it depends on its distance alone, so a comb costs one pass and no
    /// square of its channels. Both arcs of a neighbour share one logarithm, four neighbours a step.</summary>
    private double[] Neighbours(double inner)
    {
        var found = new double[Channels + Vector256<double>.Count];
        var half = Vector256.Create(inner * width / 2);
        for (var m = 1; m < Channels; m += Vector256<double>.Count)
        {
            var apart = (Vector256<double>.Indices + Vector256.Create((double)m)) * Vector256.Create(inner * spacing);
            Vector256.Log(Arc(apart + half) / Arc(apart - half)).CopyTo(found, m);
        }
        return found;
    }

    private static Vector256<double> Arc(Vector256<double> x) => x + Vector256.Sqrt((x * x) + Vector256<double>.One);
}
