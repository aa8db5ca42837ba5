using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>A ratio between ports of two rates in small whole numbers: what a port below weighs, and what an uplink may carry.</summary>
internal readonly struct RatioStep
{
    private readonly Int128 below;
    private readonly Int128 above;
    private readonly long smallBelow;
    private readonly long smallAbove;

    /// <summary>Takes the rates of both and the most that may come from below against what goes up.</summary>
    public RatioStep(BitRate rate, BitRate upRate, Ratio ratio)
    {
        below = (Int128)rate.BitsPerSecond * ratio.Denominator;
        above = (Int128)upRate.BitsPerSecond * ratio.Numerator;
        var (a, b) = (below, above);
        while (b != 0) (a, b) = (b, a % b);
        (below, above) = (below / a, above / a);
        if (below > Small || above > Small) return;
        (smallBelow, smallAbove) = ((long)below, (long)above);
    }

    /// <summary>Products of two such numbers stay inside a machine word.</summary>
    private static long Small => int.MaxValue;

    /// <summary>The fewest uplinks, in steps of so many at once, that carry a number of ports; counted in steps.</summary>
    public long Steps(long ports, int step)
    {
        if (smallAbove > 0 && ports <= Small) return ((ports * smallBelow) + (smallAbove * step) - 1) / (smallAbove * step);
        var each = above * step;
        return (long)(((ports * below) + each - 1) / each);
    }
}
