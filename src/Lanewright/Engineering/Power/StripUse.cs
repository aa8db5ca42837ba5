using System.Collections.Immutable;
using Lanewright.Model.Power;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Power;

/// <summary>A device that draws from strips of its rack.</summary>
/// <param name="Watts">The most it draws, modules included.</param>
/// <param name="Feeds">The feeds it draws evenly from.</param>
public sealed record StripUse(Watts Watts, ImmutableArray<PowerFeed> Feeds);
