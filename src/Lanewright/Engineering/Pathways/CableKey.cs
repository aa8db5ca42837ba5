namespace Lanewright.Engineering.Pathways;

/// <summary>What is laid: the cable of a link, a cord on its way through trunks, one of a group of trunks, or a cord of a line.</summary>
/// <param name="Kind">Which of these.</param>
/// <param name="Index">The link, the group of trunks, or the cord among those of all lines.</param>
/// <param name="Number">Which cord, from 0 at the first end of the link, or which trunk of the group, from 0.</param>
public readonly record struct CableKey(CableKind Kind, int Index, int Number = 0);
