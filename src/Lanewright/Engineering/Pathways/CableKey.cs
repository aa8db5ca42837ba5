namespace Lanewright.Engineering.Pathways;

/// <summary>What is laid: the cable of a link, the cord at the far end of trunks, or one of a group of trunks.</summary>
/// <param name="Kind">Which of these.</param>
/// <param name="Index">The first link of the cable, or the group of trunks.</param>
/// <param name="Number">Which trunk of the group, from 0; 0 for cables of links.</param>
public readonly record struct CableKey(CableKind Kind, int Index, int Number = 0);
