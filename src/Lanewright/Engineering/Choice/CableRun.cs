namespace Lanewright.Engineering.Choice;

/// <summary>One cable to be laid.</summary>
/// <param name="FirstLink">The first link it carries.</param>
/// <param name="Links">How many links it carries.</param>
public readonly record struct CableRun(int FirstLink, int Links);
