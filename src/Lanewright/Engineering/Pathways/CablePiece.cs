using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Pathways;

/// <summary>A cable that is laid from device to device.</summary>
/// <param name="Key">What it is.</param>
/// <param name="FromDevice">The device at one end.</param>
/// <param name="ToDevice">The device at the other.</param>
/// <param name="Question">Between which racks it lies, and in pathways of which side.</param>
/// <param name="Item">What it is by the catalogue.</param>
/// <param name="IsFixed">Whether it lies there already and is not led another way.</param>
public readonly record struct CablePiece(
    CableKey Key, int FromDevice, int ToDevice, WayQuestion Question, CableItem Item, bool IsFixed)
{
    /// <summary>Its cross-section in square millimetres; nothing where nobody states its diameter.</summary>
    public double Area => SegmentFill.Round(Item.Diameter);
}
