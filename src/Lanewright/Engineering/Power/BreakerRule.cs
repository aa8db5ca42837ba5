using Lanewright.Quantities;

namespace Lanewright.Engineering.Power;

/// <summary>How much continuous load a breaker may carry.</summary>
public static class BreakerRule
{
    /// <summary>The most continuous current.</summary>
    /// <param name="breaker">Its rating.</param>
    /// <param name="share">Share that continuous load may take.</param>
    /// <param name="isFullRated">Whether it is listed for its full rating.</param>
    public static Amperes Most(Amperes breaker, double share, bool isFullRated) => isFullRated ? breaker : breaker * share;

    /// <summary>The smallest rating for a load.</summary>
    /// <param name="continuous">Current that flows for hours.</param>
    /// <param name="other">Current that does not.</param>
    /// <param name="share">Share that continuous load may take.</param>
    public static Amperes Least(Amperes continuous, Amperes other, double share) =>
        Amperes.From((continuous.Value / share) + other.Value);
}
