using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>A line of a picture of a fabric: all links between two boxes.</summary>
/// <param name="Upper">The box further from the hosts.</param>
/// <param name="Lower">The other; the same where the links join devices of one box.</param>
/// <param name="Links">Links it stands for.</param>
/// <param name="Worst">How full the fullest of them is.</param>
/// <param name="Mean">How full they are on average.</param>
/// <param name="FabricLinks">The links of the network it stands for.</param>
internal sealed record PictureEdge(int Upper, int Lower, long Links, Share Worst, Share Mean, ImmutableArray<int> FabricLinks);
