namespace Lanewright.Engineering.Fabrics;

/// <summary>The cores that each aggregation switch above leaves may be linked to.</summary>
/// <param name="Row">The leaves.</param>
/// <param name="Fewest">What one block in a pod needs.</param>
/// <param name="Most">What ports are left for beside one block.</param>
internal readonly record struct PodReach(PodRow Row, long Fewest, long Most);
