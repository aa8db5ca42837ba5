using Lanewright.Engineering.Lines;
using Lanewright.Quantities;

namespace Lanewright.Tests.Lines;

/// <summary>Nonlinear noise with Raman scattering between channels in closed form, for endless spans (Semrau, Killey, Bayvel, JLT 2019):
/// apart from the program, which takes the effect to first order and for spans that end.</summary>
internal sealed record RamanForm(GlassSpan Span, int Channels, Frequency Spacing, Frequency Width)
{
    /// <summary>Noise of a channel against the cube of its power, 1/W².</summary>
    /// <param name="channel">Which.</param>
    /// <param name="each">Power of each channel.</param>
    /// <param name="ramanPerWattKmThz">Slope of the Raman gain in 1/(W km THz).</param>
    public double Of(int channel, PowerLevel each, double ramanPerWattKmThz)
    {
        var shift = Channels * each.Watts * ramanPerWattKmThz * 1e-15;
        var at = From(channel);
        var phi = 3 * Math.PI * Math.PI / 2 * (Span.Beta2 + (2 * Math.PI * Span.Beta3 * at));
        var (first, second) = Weights(shift * at);
        var (a, width) = (Span.Alpha, Width.Hertz);
        var own = 4.0 / 9 * Math.Pow(Span.Gamma / width, 2) * Math.PI / (phi * 3 * a * a)
            * ((first / a * Math.Asinh(phi * width * width / (Math.PI * a)))
                + (second / (2 * a) * Math.Asinh(phi * width * width / (Math.PI * 2 * a))));
        var cross = 0.0;
        for (var other = 0; other < Channels; other++)
            if (other != channel) cross += Neighbour(at, From(other), shift);
        return own + (32.0 / 27 * Math.Pow(Span.Gamma, 2) / width * cross);
    }

    private double Neighbour(double at, double there, double shift)
    {
        var (a, width) = (Span.Alpha, Width.Hertz);
        var between = 2 * Math.PI * Math.PI * (there - at) * (Span.Beta2 + (Math.PI * Span.Beta3 * (at + there)));
        var (near, far) = Weights(shift * there);
        return ((near / a * Math.Atan(between * width / a)) + (far / (2 * a) * Math.Atan(between * width / (2 * a))))
            / (between * 3 * a * a);
    }

    private double From(int channel) => (channel - ((Channels - 1) / 2.0)) * Spacing.Hertz;

    private (double First, double Second) Weights(double shift)
    {
        var a = Span.Alpha;
        var tilted = Math.Pow((2 * a) - shift, 2);
        return (tilted - (a * a), (4 * a * a) - tilted);
    }
}
