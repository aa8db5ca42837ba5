using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Pathways;

/// <summary>A cable that is laid from device to device.</summary>
/// <param name="Key">What it is.</param>
/// <param name="FromDevice">The device at one end.</param>
/// <param name="ToDevice">The device at the other.</param>
/// <param name="Question">Between which racks it lies, from which heights, and in pathways of which side.</param>
/// <param name="Item">What it is by the catalogue.</param>
/// <param name="IsFixed">Whether it stays on its way: it lies there already, or was ordered for it.</param>
public readonly record struct CablePiece(
    CableKey Key, int FromDevice, int ToDevice, WayQuestion Question, CableItem Item, bool IsFixed)
{
    /// <summary>Its cross-section in square millimetres; nothing where nobody states its diameter.</summary>
    public double Area => SegmentFill.Round(Item.Diameter);

    /// <summary>Whether it is pulled, and does not lie there already.</summary>
    public bool IsPulled => !IsFixed || Key.Kind == CableKind.LineCord;

    /// <summary>Links that run in it.</summary>
    public int Links { get; init; } = 1;

    /// <summary>Number of the cable it is some legs of; -1 where it is all of a cable. Where legs of one cable lie side by side they are
    /// one body.</summary>
    public int Body { get; init; } = -1;

    /// <summary>Links that the whole cable has; more than its own where it is some legs of a fan-out.</summary>
    public int OfLinks { get; init; } = 1;
}
