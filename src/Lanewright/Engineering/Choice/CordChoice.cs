using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Choice;

/// <summary>The cord or cords between two modules.</summary>
/// <param name="Cord">The cord; null when the catalogue has none that fits.</param>
/// <param name="FarCord">A second one, where two fan-outs meet or trunks lie between.</param>
/// <param name="ExtraConnections">Mated pairs this adds to the channel.</param>
/// <param name="LinksPerCable">Links one cord carries.</param>
internal sealed record CordChoice(CordModel? Cord, CordModel? FarCord, int ExtraConnections, int LinksPerCable)
{
    /// <summary>All cords of a way through trunks, from the first end to the second; empty where there are none.</summary>
    public ImmutableArray<PatchCord> Patching { get; init; } = [];

    /// <summary>Why a way through trunks has no cords; null where it has.</summary>
    public Check? Problem { get; init; }

    /// <summary>Length of the first cord, where trunks lie between the two; null where it is as long as the channel.</summary>
    public Length? NearLength { get; init; }

    /// <summary>Length of the second.</summary>
    public Length? FarLength { get; init; }
}
