using Lanewright.Model.Plant;

namespace Lanewright.Engineering.Plant;

/// <summary>Where a cable is patched through trunks.</summary>
/// <param name="Trunk">The trunks.</param>
/// <param name="Number">Which of them, from 1; above their count where none is left.</param>
/// <param name="NearPort">The port at the panel of the link's first end: a duplex port of the cassette, or 1 for an open array.</param>
/// <param name="FarPort">The port it arrives at on the other panel; 0 where that is not known.</param>
/// <param name="NearPanel">The panel of the link's first end.</param>
/// <param name="NearSlot">Place of the trunk's end in that panel, from 1.</param>
/// <param name="FarPanel">The other panel.</param>
/// <param name="FarSlot">Place of the trunk's end in it.</param>
public sealed record TrunkPatch(
    TrunkGroup Trunk, int Number, int NearPort, int FarPort, int NearPanel, int NearSlot, int FarPanel, int FarSlot)
{
    /// <summary>Whether there is a trunk for it.</summary>
    public bool IsThere => Number <= Trunk.Count;
}
