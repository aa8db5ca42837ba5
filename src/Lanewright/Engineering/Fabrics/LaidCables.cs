namespace Lanewright.Engineering.Fabrics;

/// <summary>Cables from one rack to another.</summary>
/// <param name="FromRack">Index of the rack at the lower end.</param>
/// <param name="ToRack">Index of the rack at the upper end.</param>
/// <param name="Cables">How many; a fan-out is one.</param>
/// <param name="SquareMillimetres">What their cross-sections add up to.</param>
internal sealed record LaidCables(int FromRack, int ToRack, int Cables, double SquareMillimetres);
