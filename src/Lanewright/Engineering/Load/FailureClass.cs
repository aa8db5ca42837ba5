using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>Failures that are alike, and what each of them does.</summary>
/// <param name="Kind">What sort of thing fails.</param>
/// <param name="Units">The units of the class, as indexes into the units asked about, rising; the first stands for all.</param>
/// <param name="MaxUtilisation">How full the busiest link then is.</param>
/// <param name="BusiestLink">That link when the first unit fails, as an index into the links of the whole fabric; -1 when nothing
/// flows.</param>
/// <param name="MembersCut">Hosts that are up and cannot reach the largest part of the fabric.</param>
/// <param name="MembersDown">Hosts that are down with it: of a rack that fails, or without power.</param>
/// <param name="UnroutedGigabits">Demand between hosts that are up which finds no path, in Gb/s.</param>
/// <param name="LostGigabits">That, what hosts that are down would have sent and received, and what others no longer have the
/// links to send.</param>
public sealed record FailureClass(
    FailureKind Kind,
    ImmutableArray<int> Units,
    Share MaxUtilisation,
    int BusiestLink,
    int MembersCut,
    int MembersDown,
    double UnroutedGigabits,
    double LostGigabits)
{
    /// <summary>Hosts that nobody reaches any more: cut off, or down themselves.</summary>
    public int HostsLost => MembersCut + MembersDown;

    /// <summary>How many units are alike.</summary>
    public int Size => Units.Length;
}
