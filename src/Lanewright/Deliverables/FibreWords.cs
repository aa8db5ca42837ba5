using Lanewright.Engineering.Plant;
using Lanewright.Quantities;

namespace Lanewright.Deliverables;

/// <summary>Fibres in words.</summary>
public static class FibreWords
{
    /// <summary>What a fibre begins at.</summary>
    public static string Start(FibreLine fibre) => Word(!fibre.IsSent, fibre.Lane, fibre.Start);

    /// <summary>What a fibre ends at.</summary>
    public static string End(FibreLine fibre) => fibre.MeetsReceiver switch
    {
        { } isReceiver => Word(isReceiver, fibre.EndLane, fibre.End),
        null => "nothing",
    };

    /// <summary>A position of an array, or a port and its side; a dash where a fibre goes astray.</summary>
    public static string Spot(FibreSpot spot) => spot == default ? "-"
        : spot.IsDuplex ? Numerals.Whole(spot.Port) + (spot.Side == 1 ? "A" : "B")
        : Numerals.Whole(spot.Position);

    /// <summary>A duplex port has one lane, which needs no number.</summary>
    private static string Word(bool isReceiver, int lane, FibreSpot at) =>
        (isReceiver ? "rx" : "tx") + (at.IsDuplex ? "" : " " + Numerals.Whole(lane));
}
