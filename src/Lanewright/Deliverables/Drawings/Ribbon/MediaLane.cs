namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>One lane of light or current in one direction, at one end.</summary>
/// <param name="Number">Its number among the lanes of its end in its direction, from 1.</param>
/// <param name="Leaves">Whether it leaves this end.</param>
/// <param name="Port">Which port of the cage it belongs to, from 0.</param>
/// <param name="Note">What is written on it: its wavelengths; empty for copper.</param>
internal sealed record MediaLane(int Number, bool Leaves, int Port, string Note = "");
