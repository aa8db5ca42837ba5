using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Power;

/// <summary>What is drawn from a feed.</summary>
/// <param name="Watts">Over all phases.</param>
/// <param name="Phases">Current of each phase.</param>
public sealed record FeedDraw(Watts Watts, ImmutableArray<Amperes> Phases);
