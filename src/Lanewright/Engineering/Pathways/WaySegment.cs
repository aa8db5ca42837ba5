using Lanewright.Model.Places;

namespace Lanewright.Engineering.Pathways;

/// <summary>A stretch of a pathway between two points where cables may enter, leave or turn.</summary>
/// <param name="Pathway">The pathway.</param>
/// <param name="A">Index of one of the points.</param>
/// <param name="B">Index of the other.</param>
/// <param name="Metres">How long it is.</param>
public readonly record struct WaySegment(Pathway Pathway, int A, int B, double Metres);
