using Lanewright.Model.Plant;

namespace Lanewright.Engineering.Plant;

/// <summary>Where a link goes through one group of trunks.</summary>
/// <param name="Leg">The trunks, and which way round the link goes through them.</param>
/// <param name="Number">Which of them, from 1; above their count where none is left.</param>
/// <param name="NearPort">The port at which it goes in: a duplex port of the cassette, or 1 for an open array.</param>
/// <param name="FarPort">The port at which it comes out; 0 where that is not known.</param>
/// <param name="NearSlot">Place of the trunk's end in the panel where it goes in, from 1.</param>
/// <param name="FarSlot">Place of the trunk's end in the other.</param>
public sealed record TrunkPatch(TrunkLeg Leg, int Number, int NearPort, int FarPort, int NearSlot, int FarSlot)
{
    /// <summary>The trunks.</summary>
    public TrunkGroup Trunk => Leg.Trunk;

    /// <summary>The panel where it goes in.</summary>
    public int NearPanel => Leg.NearPanel;

    /// <summary>The panel where it comes out.</summary>
    public int FarPanel => Leg.FarPanel;

    /// <summary>Whether there is a trunk for it.</summary>
    public bool IsThere => Number <= Trunk.Count;

    /// <summary>Whether it goes in at an open array.</summary>
    public bool IsNearOpen => Trunk.CassetteAt(Leg.IsTurned) is null;

    /// <summary>Whether it comes out at an open array.</summary>
    public bool IsFarOpen => Trunk.CassetteAt(!Leg.IsTurned) is null;
}
