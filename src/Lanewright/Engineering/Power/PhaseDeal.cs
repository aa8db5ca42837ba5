using System.Collections.Immutable;

namespace Lanewright.Engineering.Power;

/// <summary>At which phase, or between which two, each load of a strip is plugged in.</summary>
/// <param name="Sections">The section of each load, from zero: section i is phase i and neutral, or phase i and the next one.</param>
/// <param name="IsBest">Whether no other order has a fullest phase that carries less.</param>
public sealed record PhaseDeal(ImmutableArray<int> Sections, bool IsBest);
