using Lanewright.Quantities;

namespace Lanewright.Model;

/// <summary>How sure spares are to last until more arrive.</summary>
/// <param name="Confidence">The probability wanted, above 0 and below 1.</param>
/// <param name="Resupply">From a failure until its spare is replaced.</param>
/// <param name="Count">What it is the probability of.</param>
public sealed record SpareLevel(Share Confidence, Duration Resupply, SpareCount Count);
