using Lanewright.Engineering.Lines;

namespace Lanewright.Tests.Lines;

/// <summary>Noise of single channels of a flat comb, as cases and papers tell it.</summary>
internal static class CombSums
{
    /// <summary>What its neighbours do to a channel.</summary>
    public static double Cross(this NonlinearNoise comb, int channel) => comb.CrossTilted(default).Cross[channel];

    /// <summary>With what it does to itself.</summary>
    public static double Plain(this NonlinearNoise comb, int channel) => comb.Own + comb.Cross(channel);

    /// <summary>With the part of the neighbours scaled for symbols that are not Gaussian.</summary>
    public static double Expected(this NonlinearNoise comb, int channel, double excessKurtosis) =>
        comb.Own + (comb.Cross(channel) * NonlinearNoise.CrossShare(excessKurtosis));
}
