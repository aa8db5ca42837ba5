namespace Lanewright.Engineering.Pathways;

/// <summary>A cable that was led another way because a pathway on its shortest one had no room or bears no more.</summary>
/// <param name="Key">The cable.</param>
/// <param name="Full">The stretch that had no room.</param>
/// <param name="MoreMetres">How much longer the new way is.</param>
public sealed record CableMove(CableKey Key, int Full, double MoreMetres)
{
    /// <summary>Whether there was room in it, and it bears no more.</summary>
    public bool IsForLoad { get; init; }
}
