using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>One thing that light passes on its way.</summary>
/// <param name="Kind">What it is: port, module, cable, cord, connection, cassette, trunk, splices, attenuator or reserve.</param>
/// <param name="Id">Which: a place, a part, a cable.</param>
/// <param name="Position">The port or fibres it takes there; empty where there is only one.</param>
/// <param name="Loss">What it costs; null for what is no part of the channel.</param>
public sealed record PathElement(string Kind, string Id, string Position, Decibels? Loss)
{
    /// <summary>Which trunk of the way it belongs to, from 0, the pairs at its panels included; -1 outside the trunks.</summary>
    public int Leg { get; init; } = -1;
}
