namespace Lanewright.Engineering.Fabrics;

/// <summary>How far one wish has to give way, the others kept.</summary>
/// <param name="Wish">The wish.</param>
/// <param name="Possible">The nearest that is possible, in words; null when no giving way of this wish alone helps.</param>
/// <param name="By">The design that makes it possible, in words; empty when there is none.</param>
public sealed record Relaxation(Wish Wish, string? Possible, string By)
{
    /// <summary>The same in numbers; null where there are none.</summary>
    public WishFigures? Figures { get; init; }
}
