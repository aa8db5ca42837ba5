using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>The share of time a thing works, from how often it fails and how long repair takes. Failures are independent.</summary>
public static class Availability
{
    /// <summary>The share of time one unit is up.</summary>
    /// <param name="failuresPerYear">Failures in a year of 365.25 days of running, zero or more.</param>
    /// <param name="repair">From failure to working again, on average.</param>
    public static Share OfUnit(double failuresPerYear, TimeSpan repair) => throw new NotSupportedException();

    /// <summary>The probability that at least so many of equal units are up: a binomial tail.</summary>
    /// <param name="units">Units there are.</param>
    /// <param name="needed">Units that are needed.</param>
    /// <param name="up">The share of time each is up.</param>
    public static Share AtLeast(int units, int needed, Share up) => throw new NotSupportedException();

    /// <summary>The share of time in which no link is fuller than the limit and no host is cut. Exact for none and one failure; what two or
    /// more do is not known here, so that the lower bound calls it bad and the upper bound good.</summary>
    /// <param name="sweep">What each single failure does.</param>
    /// <param name="limit">How full a link may be.</param>
    /// <param name="up">The share of time a unit of each kind is up; a kind that is missing never fails.</param>
    public static ShareInterval OfFabric(FailureSweep sweep, Share limit, ImmutableDictionary<FailureKind, Share> up) =>
        throw new NotSupportedException();
}
