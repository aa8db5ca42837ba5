using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Choice;

/// <summary>One cord on a way through trunks.</summary>
/// <param name="Cord">What it is.</param>
/// <param name="Length">Length to order.</param>
/// <param name="Kind">What it joins.</param>
/// <param name="Links">Links that share one.</param>
/// <param name="Positions">Positions of its array; 0 where it has none.</param>
public sealed record PatchCord(CordModel Cord, Length Length, PatchKind Kind, int Links, int Positions)
{
    /// <summary>Whether all its links run side by side in it from end to end.</summary>
    public bool IsWhole => Kind == PatchKind.Array && Links > 1;
}
