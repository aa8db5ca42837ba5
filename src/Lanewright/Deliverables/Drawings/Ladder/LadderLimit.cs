using Lanewright.Engineering.Links;

namespace Lanewright.Deliverables.Drawings.Ladder;

/// <summary>A limit of the loss, and the comparison it comes from.</summary>
/// <param name="Words">What the limit is.</param>
/// <param name="Margin">How its margin is told from that of another limit.</param>
/// <param name="Check">The comparison.</param>
internal sealed record LadderLimit(string Words, string Margin, Check Check);
