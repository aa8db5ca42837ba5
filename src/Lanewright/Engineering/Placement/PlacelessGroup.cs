namespace Lanewright.Engineering.Placement;

/// <summary>A group that no place was found for.</summary>
/// <param name="Group">Index of the group.</param>
/// <param name="Devices">How many of its devices have a place.</param>
/// <param name="Places">Places there are for them where they may stand; -1 where no device of it has one now.</param>
public sealed record PlacelessGroup(int Group, int Devices, int Places);
