using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>Power that stimulated Raman scattering moves from high to low frequencies of a comb with a flat launch (triangular gain;
/// Zirngibl, Electron. Lett. 34 (1998) 789). The tilt is straight in dB over frequency and depends on total power alone.</summary>
/// <param name="SlopePerWattKmThz">Slope of the Raman gain in 1/(W km THz).</param>
/// <param name="TotalWatts">Power of all channels together.</param>
/// <param name="Effective">Effective length of the span.</param>
/// <param name="Width">Width of the comb.</param>
public sealed record RamanTilt(double SlopePerWattKmThz, double TotalWatts, Length Effective, Frequency Width)
{
    private double PerTerahertz { get; } = SlopePerWattKmThz * TotalWatts * Effective.Kilometres;

    private double Spread { get; } = Math.Log(SpreadOf(SlopePerWattKmThz * TotalWatts * Effective.Kilometres * Width.Terahertz / 2));

    /// <summary>From the lowest to the highest frequency.</summary>
    public Decibels Whole => Decibels.From(10 / Math.Log(10) * PerTerahertz * Width.Terahertz);

    /// <summary>What a channel gains, at an offset from the middle of the comb in terahertz.</summary>
    public Decibels At(double offsetTerahertz) =>
        Decibels.From(10 / Math.Log(10) * (Spread - (PerTerahertz * offsetTerahertz)));

    /// <summary>The same as plain ratios of powers, for many offsets.</summary>
    public void Ratios(ReadOnlySpan<double> offsetsTerahertz, Span<double> into) =>
        Exponentials.Of(Spread, -PerTerahertz, offsetsTerahertz, into);

    /// <summary>What is taken from all, so that the total stays what it is.</summary>
    private static double SpreadOf(double half) => half != 0 ? half / Math.Sinh(half) : 1;
}
