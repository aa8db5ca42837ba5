using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>What one outage does.</summary>
/// <param name="MaxUtilisation">How full the busiest link then is.</param>
/// <param name="BusiestLink">That link of the whole fabric; -1 when nothing flows.</param>
/// <param name="MembersCut">Hosts that are up and cannot reach the largest part of what they could reach before.</param>
/// <param name="MembersDown">Hosts that are down themselves.</param>
/// <param name="UnroutedGigabits">Demand between hosts that are up without a path, in Gb/s.</param>
/// <param name="LostGigabits">That, what hosts that are down would have sent and received, and what others no longer have the
/// links to send.</param>
internal sealed record OutageEffect(
    Share MaxUtilisation, int BusiestLink, int MembersCut, int MembersDown, double UnroutedGigabits, double LostGigabits);
