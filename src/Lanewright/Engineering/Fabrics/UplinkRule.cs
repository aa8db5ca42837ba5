using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>The fewest parallel uplinks that keep a ratio, also with some of the upper switches out. Whole numbers only.</summary>
internal static class UplinkRule
{
    /// <summary>Three factors of this size stay inside a machine word.</summary>
    private const long Small = 1 << 20;

    /// <summary>Links to each of the upper switches, or 0 where too few of those are left.</summary>
    /// <param name="ports">Ports below.</param>
    /// <param name="rate">Rate of each.</param>
    /// <param name="uppers">Upper switches.</param>
    /// <param name="out">How many of them may be out.</param>
    /// <param name="upRate">Rate of each uplink.</param>
    /// <param name="ratio">The most that may come from below against what goes up.</param>
    public static int Parallel(long ports, BitRate rate, int uppers, int @out, BitRate upRate, Ratio ratio)
    {
        if (uppers <= @out) return 0;
        // Rates share a large divisor, and then all fits into a machine word.
        var step = Divisor(rate.BitsPerSecond, upRate.BitsPerSecond);
        if (ports <= Small && ratio.Numerator <= Small && ratio.Denominator <= Small && uppers <= Small
            && rate.BitsPerSecond / step <= Small && upRate.BitsPerSecond / step <= Small)
        {
            var down = ports * (rate.BitsPerSecond / step) * ratio.Denominator;
            var up = ratio.Numerator * (upRate.BitsPerSecond / step) * (uppers - @out);
            return (int)((down + up - 1) / up);
        }
        var below = (Int128)ports * rate.BitsPerSecond * ratio.Denominator;
        var each = (Int128)ratio.Numerator * upRate.BitsPerSecond * (uppers - @out);
        return (int)((below + each - 1) / each);
    }

    /// <summary>The most ports below that a number of uplinks carries at a ratio.</summary>
    public static long PortsBelow(long uplinks, BitRate upRate, BitRate rate, Ratio ratio) =>
        (long)((Int128)uplinks * upRate.BitsPerSecond * ratio.Numerator / ((Int128)rate.BitsPerSecond * ratio.Denominator));

    /// <summary>What comes from below against what goes up with nothing out.</summary>
    public static Ratio Achieved(long ports, BitRate rate, long uplinks, BitRate upRate)
    {
        var (below, above) = ((Int128)ports * rate.BitsPerSecond, (Int128)uplinks * upRate.BitsPerSecond);
        var (a, b) = (below, above);
        while (b != 0) (a, b) = (b, a % b);
        return new Ratio((long)(below / a), (long)(above / a));
    }

    private static long Divisor(long a, long b)
    {
        while (b != 0) (a, b) = (b, a % b);
        return Math.Max(1, a);
    }

    /// <summary>How many upper switches may be out while a ratio holds; below zero where it does not hold at all.</summary>
    public static int Survives(long ports, BitRate rate, int uppers, int parallel, BitRate upRate, Ratio ratio)
    {
        var below = (Int128)ports * rate.BitsPerSecond * ratio.Denominator;
        var each = (Int128)ratio.Numerator * upRate.BitsPerSecond * parallel;
        return uppers - (int)((below + each - 1) / each);
    }
}
