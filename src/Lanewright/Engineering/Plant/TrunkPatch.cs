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
    /// <summary>The nth port of a group, as a link meets it.</summary>
    /// <param name="leg">The trunks, and which way round.</param>
    /// <param name="inside">How they lead fibres.</param>
    /// <param name="nth">Which port, from 0.</param>
    /// <param name="part">Which port of a split cage the link is, from 1.</param>
    /// <param name="nearSlot">Place of the first trunk's near end in its panel.</param>
    /// <param name="farSlot">Place of its far end.</param>
    public static TrunkPatch Of(TrunkLeg leg, TrunkInside inside, int nth, int part, int nearSlot, int farSlot)
    {
        var trunk = leg.Trunk;
        var (number, port) = ((nth / trunk.PortsEach) + 1, (nth % trunk.PortsEach) + 1);
        // Ports are counted from the trunk's own near panel, whichever way round a link goes.
        var here = trunk.CassetteEnds == CassetteEnds.From ? part : port;
        var there = trunk.IsDuplex ? inside.FarPortOf(port) : trunk.CassetteEnds == CassetteEnds.To ? part : 1;
        var (near, far) = (nearSlot + number - 1, farSlot + number - 1);
        return leg.IsTurned ? new TrunkPatch(leg, number, there, here, far, near) : new TrunkPatch(leg, number, here, there, near, far);
    }

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
