using Lanewright.Quantities;
using MathNet.Numerics;

namespace Lanewright.Engineering.Load;

/// <summary>The share of time a thing works, from how often it fails and how long repair takes. Failures are independent.</summary>
public static class Availability
{
    /// <summary>The share of time one unit is up: it runs on average so long until it fails, and is then repaired.</summary>
    /// <param name="failuresPerYear">Failures in a year of running, zero or more; a year has 365 days.</param>
    /// <param name="repair">From failure to working again, on average; zero or more.</param>
    public static Share OfUnit(double failuresPerYear, TimeSpan repair)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(failuresPerYear);
        ArgumentOutOfRangeException.ThrowIfLessThan(repair, TimeSpan.Zero);
        return Share.From(1 / (1 + (failuresPerYear * (repair.TotalHours / Duration.Year.Hours))));
    }

    /// <summary>The probability that at least so many of equal units are up: a binomial tail, by the regularised beta function.</summary>
    /// <param name="units">Units there are, zero or more.</param>
    /// <param name="needed">Units that are needed.</param>
    /// <param name="up">The share of time each is up, 0 to 1.</param>
    public static Share AtLeast(int units, int needed, Share up)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(units);
        if (needed <= 0) return Share.From(1);
        if (needed > units) return Share.From(0);
        return Share.From(SpecialFunctions.BetaRegularized(needed, units - needed + 1, up.Value));
    }

    /// <summary>The share of time in which no link is fuller than the limit and no host is cut off
    /// or down. Exact for none and one failure; what two
    /// or more do is not known here, so that the lower bound calls it bad, the upper bound good, and the estimate lies between.</summary>
    /// <param name="sweep">What each single failure does.</param>
    /// <param name="limit">How full a link may be.</param>
    /// <param name="up">The share of time a unit is up, above 0, by its number.</param>
    public static ShareInterval OfFabric(FailureSweep sweep, Share limit, Func<int, Share> up)
    {
        // Sums of logarithms, as the product over a hundred thousand units would lose the places that matter.
        var noneDown = Math.Exp(sweep.Classes.Sum(c => c.Units.Sum(u => Math.Log(up(u).Value))));
        var isGoodWhole = sweep.Intact <= limit && sweep.IntactUnroutedGigabits == 0;
        var (good, bad) = isGoodWhole ? (noneDown, 0.0) : (0.0, noneDown);
        foreach (var one in sweep.Classes)
        {
            var onlyThis = noneDown * one.Units.Sum(u => (1 - up(u).Value) / up(u).Value);
            if (one.HostsLost == 0 && one.UnroutedGigabits == 0 && one.MaxUtilisation <= limit) good += onlyThis;
            else bad += onlyThis;
        }
        return new ShareInterval(Share.From(good), Share.From((good + 1 - bad) / 2), Share.From(1 - bad));
    }
}
