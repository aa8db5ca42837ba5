using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Text;

namespace Lanewright.Engineering.Plant;

/// <summary>Whether transmitters meet receivers on a way through trunks, and with which cords they do.</summary>
/// <param name="Verdict">Pass, fail, or unproven where a needed map is not known.</param>
/// <param name="IsCrossed">Whether transmitters meet receivers, whatever the order of the lanes; null where it is not known.</param>
/// <param name="LaneOrder">For each lane that is sent the lane it arrives at, 0 for none; empty for duplex ports and where it is not
/// known.</param>
/// <param name="CordTypes">The type of each cord from the first end of the link to the second, such as <c>A-to-B</c>.</param>
/// <param name="Fibres">Every fibre, followed.</param>
/// <param name="Reasons">What is wrong or not known, in words.</param>
/// <param name="Source">The weakest of the rows it rests on.</param>
public sealed record WayPolarity(
    Verdict Verdict, bool? IsCrossed, ImmutableArray<int> LaneOrder, ImmutableArray<string> CordTypes, ImmutableArray<FibreLine> Fibres,
    ImmutableArray<string> Reasons, Citation Source)
{
    /// <summary>Whether all ends mate: angled ones do not in adapters that turn plugs over.</summary>
    public bool IsMated { get; init; } = true;
}
