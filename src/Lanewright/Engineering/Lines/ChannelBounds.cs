using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>What a channel can carry at most, and how it fits beside its neighbours.</summary>
public static class ChannelBounds
{
    /// <summary>The least signal over noise at which a rate goes through a width in two polarisations.</summary>
    public static Decibels Shannon(BitRate rate, Frequency width) =>
        Decibels.OfRatio(Math.Pow(2, rate.BitsPerSecond / (2 * width.Hertz)) - 1);

    /// <summary>Half of what is left between spacing and spectrum, less what the laser may be off, in gigahertz.</summary>
    public static double Clearance(Frequency spacing, Baud baud, double rollOff, Frequency laserError) =>
        ((spacing.Gigahertz - (baud.Gigabaud * (1 + rollOff))) / 2) - laserError.Gigahertz;
}
