using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Power;

/// <summary>A power feed: a strip in each of its racks, each behind a breaker of its own.</summary>
/// <param name="Name">Its name; groups of devices name the feeds they draw from.</param>
/// <param name="Racks">Indices of the racks it feeds, in order.</param>
/// <param name="Volts">Volts between phases; of a single phase, volts between its conductors.</param>
/// <param name="Phases">1 or 3.</param>
/// <param name="IsPhaseToPhase">Whether outlets lie between two phases rather than between a phase and neutral.</param>
/// <param name="Breaker">Rating of the breaker of each strip, each phase.</param>
/// <param name="IsFullRated">Whether breaker and enclosure are listed for continuous load at the full rating.</param>
/// <param name="Span">Where the plan says so.</param>
public sealed record PowerFeed(
    string Name, ImmutableArray<int> Racks, double Volts, int Phases, bool IsPhaseToPhase, Amperes Breaker, bool IsFullRated,
    SourceSpan Span);
