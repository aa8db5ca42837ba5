using Lanewright.Engineering.Pathways;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Cables from one rack to another.</summary>
/// <param name="Question">Between which racks and heights they lie.</param>
/// <param name="Cables">How many; a fan-out is one.</param>
/// <param name="SquareMillimetres">What their cross-sections add up to.</param>
internal sealed record LaidCables(WayQuestion Question, int Cables, double SquareMillimetres);
