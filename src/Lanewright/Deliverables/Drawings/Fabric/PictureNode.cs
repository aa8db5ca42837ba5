using System.Collections.Immutable;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>A box of a picture of a fabric: one switch, or several that are drawn as one.</summary>
/// <param name="Tier">Its tier.</param>
/// <param name="Name">Its name.</param>
/// <param name="Count">Devices it stands for.</param>
/// <param name="Nodes">The nodes of the network it stands for.</param>
internal sealed record PictureNode(int Tier, string Name, long Count, ImmutableArray<int> Nodes);
