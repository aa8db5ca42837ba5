namespace Lanewright.Engineering.Pathways;

/// <summary>Where a way is looked for: from rack to rack in one hall or from one hall to another, in pathways of a side or of
/// none.</summary>
/// <param name="From">Index of the rack of the lower number.</param>
/// <param name="To">Index of the other rack.</param>
/// <param name="Side">Number of the side; 0 for any.</param>
public readonly record struct WayQuestion(int From, int To, int Side)
{
    /// <summary>The question between two racks, whichever is named first.</summary>
    public static WayQuestion Between(int one, int other, int side) => new(Math.Min(one, other), Math.Max(one, other), side);
}
