using Lanewright.Model.Catalogues;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>How the switches of one tier reach the tier above.</summary>
/// <param name="Tier">The lower tier, from 0 at the hosts.</param>
/// <param name="Hosts">The kind of hosts below, where leaves differ by kind; empty above the leaves.</param>
/// <param name="Rate">Rate of each link.</param>
/// <param name="LowerMode">How the cages of the lower switches are split.</param>
/// <param name="UpperMode">How the cages of the upper switches are split.</param>
/// <param name="Uplinks">Links of each lower switch upward.</param>
/// <param name="Uppers">Upper switches that each lower switch is linked to.</param>
/// <param name="Parallel">Links between each lower and each upper switch.</param>
/// <param name="Links">All links of the tier at the start.</param>
/// <param name="Achieved">Bandwidth from below against bandwidth upward, of a full switch with nothing out.</param>
public sealed record TierUplinks(
    int Tier, string Hosts, BitRate Rate, PortMode LowerMode, PortMode UpperMode, int Uplinks, int Uppers, int Parallel, int Links,
    Ratio Achieved);
