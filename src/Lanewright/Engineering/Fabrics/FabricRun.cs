namespace Lanewright.Engineering.Fabrics;

/// <summary>Devices of a group that follow one another.</summary>
/// <param name="Group">Index of the group in the layout.</param>
/// <param name="First">The first, from 0.</param>
/// <param name="Count">How many.</param>
public readonly record struct FabricRun(int Group, int First, int Count);
