using System.Collections.Immutable;
using Lanewright.Model.Power;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Power;

/// <summary>A device that draws from strips of its rack.</summary>
/// <param name="Watts">The most it draws, modules included.</param>
/// <param name="Feeds">The feeds it draws evenly from.</param>
/// <param name="Device">Its number in the plan; -1 for one that is not there yet.</param>
public sealed record StripUse(Watts Watts, ImmutableArray<PowerFeed> Feeds, int Device = -1);
