namespace Lanewright.Engineering.Lines;

/// <summary>Noise that the glass itself makes from a comb of channels of one width and power: the Gaussian-noise model summed over
/// channels (Poggiolini et al., JLT 30(24) 2012 and 32(4) 2014), and its form with Raman scattering (Semrau, Killey, Bayvel, JLT 2019).
/// All values are 1/W²: noise in the width of a channel is the value times the cube of the power.</summary>
/// <param name="Span">The glass.</param>
/// <param name="Channels">Channels of the comb.</param>
/// <param name="SpacingHz">From channel to channel.</param>
/// <param name="WidthHz">Symbol rate.</param>
public sealed record NonlinearNoise(GlassSpan Span, int Channels, double SpacingHz, double WidthHz)
{
    /// <summary>What the channel does to itself and what its neighbours do to it.</summary>
    public (double Own, double Cross) Plain(int channel)
    {
        var scale = 16.0 / 27 * Square(Span.Gamma * Span.EffectiveMetres / WidthHz);
        var reach = Math.Abs(Span.Beta2) / Span.Alpha;
        var own = scale * Math.Asinh(Math.PI * Math.PI / 2 * reach * WidthHz * WidthHz) / (2 * Math.PI * reach);
        var cross = 0.0;
        for (var other = 0; other < Channels; other++)
        {
            if (other != channel)
            {
                cross += Neighbour(Math.Abs(other - channel) * SpacingHz, reach);
            }
        }

        return (own, 2 * scale * cross);
    }

    /// <summary>The plain value with the part of the neighbours scaled for symbols that are not Gaussian. It holds for one span: over
    /// several the plain value stands. The own part is never scaled, since for QPSK that would fall below what happens.</summary>
    public double Expected(int channel, double excessKurtosis)
    {
        var (own, cross) = Plain(channel);
        return own + (cross * (1 + (5.0 / 6 * excessKurtosis)));
    }

    /// <summary>The value when the comb's total power moves power from high to low frequencies. The span is taken as long.</summary>
    public double WithRaman(int channel, double wattsEach, double ramanPerWattKmThz)
    {
        var shift = Channels * wattsEach * ramanPerWattKmThz * 1e-15;
        var at = From(channel);
        var phi = 1.5 * Math.PI * Math.PI * (Span.Beta2 + (2 * Math.PI * Span.Beta3 * at));
        var (first, second) = Weights(shift * at);
        var a = Span.Alpha;
        var own = 4.0 / 9 * Square(Span.Gamma / WidthHz) * Math.PI / (phi * 3 * a * a)
            * ((first / a * Math.Asinh(phi * WidthHz * WidthHz / (Math.PI * a)))
                + (second / (2 * a) * Math.Asinh(phi * WidthHz * WidthHz / (Math.PI * 2 * a))));
        var cross = 0.0;
        for (var other = 0; other < Channels; other++)
        {
            if (other == channel)
            {
                continue;
            }

            var there = From(other);
            var between = 2 * Math.PI * Math.PI * (there - at) * (Span.Beta2 + (Math.PI * Span.Beta3 * (at + there)));
            var (near, far) = Weights(shift * there);
            cross += ((near / a * Math.Atan(between * WidthHz / a)) + (far / (2 * a) * Math.Atan(between * WidthHz / (2 * a))))
                / (between * 3 * a * a);
        }

        return own + (32.0 / 27 * Square(Span.Gamma) / WidthHz * cross);
    }

    /// <summary>The launch power that leaves most signal over noise, in watts: there the amplifiers' noise is twice the glass's.</summary>
    public static double BestWatts(double amplifierNoiseWatts, double noisePerCube) => Math.Cbrt(amplifierNoiseWatts / (2 * noisePerCube));

    /// <summary>Signal over all noise at a launch power, as a plain ratio.</summary>
    public static double Ratio(double watts, double amplifierNoiseWatts, double noisePerCube) =>
        watts / (amplifierNoiseWatts + (noisePerCube * watts * watts * watts));

    private double From(int channel) => (channel - ((Channels - 1) / 2.0)) * SpacingHz;

    private (double First, double Second) Weights(double shift)
    {
        var a = Span.Alpha;
        var tilted = Square((2 * a) - shift);
        return (tilted - (a * a), (4 * a * a) - tilted);
    }

    private double Neighbour(double apart, double reach)
    {
        var inner = Math.PI * Math.PI * reach * WidthHz;
        return (Math.Asinh(inner * (apart + (WidthHz / 2))) - Math.Asinh(inner * (apart - (WidthHz / 2)))) / (4 * Math.PI * reach);
    }

    private static double Square(double value) => value * value;
}
