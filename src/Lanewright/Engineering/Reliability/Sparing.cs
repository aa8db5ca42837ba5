using Lanewright.Model;
using Lanewright.Quantities;
using MathNet.Numerics;

namespace Lanewright.Engineering.Reliability;

/// <summary>How many spares last until more arrive. Failures come at a constant rate and independently (Poisson); early failures and
/// causes that take many at once are outside it.</summary>
public static class Sparing
{
    /// <summary>The probability of no more than so many failures where so many are expected.</summary>
    /// <param name="expected">Zero or more.</param>
    /// <param name="most">Failures; none below zero.</param>
    public static Share NoMoreThan(double expected, long most)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(expected);
        if (most < 0) return Share.From(0);
        return Share.From(expected == 0 ? 1 : SpecialFunctions.GammaUpperRegularized(most + 1, expected));
    }

    /// <summary>The fewest spares that reach a level.</summary>
    /// <param name="expected">Failures to expect until more arrive.</param>
    /// <param name="level">The probability wanted, below 1.</param>
    /// <param name="count">What it is the probability of.</param>
    public static long Least(double expected, Share level, SpareCount count)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(level.Value, 1);
        long high = 1;
        while (NoMoreThan(expected, high) < level) high *= 2;
        long low = -1;
        while (high - low > 1)
        {
            var middle = low + ((high - low) / 2);
            if (NoMoreThan(expected, middle) < level) low = middle;
            else high = middle;
        }
        return count == SpareCount.OneOnShelf ? high + 1 : high;
    }
}
