namespace Lanewright.Model.Devices;

/// <summary>How many logical ports a stretch of cages may have in total.</summary>
/// <param name="Start">Index of the first cage.</param>
/// <param name="Count">How many cages.</param>
/// <param name="Most">Logical ports.</param>
public sealed record PortCeiling(int Start, int Count, int Most);
