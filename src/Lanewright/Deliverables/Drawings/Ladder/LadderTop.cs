using Lanewright.Engineering.Links;

namespace Lanewright.Deliverables.Drawings.Ladder;

/// <summary>The brightest case: the highest launch over the least loss, against the receiver's upper limit.</summary>
/// <param name="Launch">Highest launch, in dBm.</param>
/// <param name="Check">The comparison at the receiver.</param>
internal sealed record LadderTop(double Launch, Check Check);
