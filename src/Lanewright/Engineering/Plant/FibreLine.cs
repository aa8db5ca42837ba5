using System.Collections.Immutable;

namespace Lanewright.Engineering.Plant;

/// <summary>One fibre followed from the first end of a link to the second.</summary>
/// <param name="IsSent">Whether it begins at a transmitter of the first end; otherwise at a receiver.</param>
/// <param name="Lane">The lane there, from 1.</param>
/// <param name="Start">Where it leaves the module.</param>
/// <param name="Hops">The trunks it runs through.</param>
/// <param name="End">Where it enters the other module; nowhere where it goes astray.</param>
/// <param name="MeetsReceiver">Whether a receiver sits there; null where nothing does.</param>
/// <param name="EndLane">The lane there; 0 where nothing sits.</param>
public sealed record FibreLine(
    bool IsSent, int Lane, FibreSpot Start, ImmutableArray<FibreHop> Hops, FibreSpot End, bool? MeetsReceiver, int EndLane)
{
    /// <summary>Whether a transmitter and a receiver are at its ends.</summary>
    public bool IsCrossed => MeetsReceiver == IsSent;
}
