using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>The fewest parallel uplinks that keep a ratio, also with some of the upper switches out. Whole numbers only.</summary>
internal static class UplinkRule
{
    /// <summary>Links to each of the upper switches, or 0 where too few of those are left.</summary>
    /// <param name="ports">Ports below.</param>
    /// <param name="rate">Rate of each.</param>
    /// <param name="uppers">Upper switches.</param>
    /// <param name="out">How many of them may be out.</param>
    /// <param name="upRate">Rate of each uplink.</param>
    /// <param name="ratio">The most that may come from below against what goes up.</param>
    public static int Parallel(long ports, BitRate rate, int uppers, int @out, BitRate upRate, Ratio ratio)
    {
        return uppers <= @out ? 0 : checked((int)new RatioStep(rate, upRate, ratio).Steps(ports, uppers - @out));
    }

    /// <summary>What comes from below against what goes up with nothing out.</summary>
    public static Ratio Achieved(long ports, BitRate rate, long uplinks, BitRate upRate)
    {
        var (below, above) = ((Int128)ports * rate.BitsPerSecond, (Int128)uplinks * upRate.BitsPerSecond);
        var (a, b) = (below, above);
        while (b != 0) (a, b) = (b, a % b);
        return new Ratio((long)(below / a), (long)(above / a));
    }

    /// <summary>How many upper switches may be out while a ratio holds; below zero where it does not hold at all.</summary>
    public static int Survives(long ports, BitRate rate, int uppers, int parallel, BitRate upRate, Ratio ratio)
    {
        return uppers - checked((int)new RatioStep(rate, upRate, ratio).Steps(ports, parallel));
    }
}
