namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>One electrical lane between the port and what sits in its cage.</summary>
/// <param name="Port">Which port of the cage, from 0.</param>
/// <param name="Leaves">Whether it leads out of the port.</param>
/// <param name="Y">Its height on the sheet.</param>
internal sealed record ContactLane(int Port, bool Leaves, double Y);
