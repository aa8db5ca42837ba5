using System.Collections.Immutable;

namespace Lanewright.Engineering.Fabrics;

/// <summary>How far a wish has to give way, in numbers.</summary>
/// <param name="Wanted">What is wanted; null where it is no number.</param>
/// <param name="Possible">The nearest that is possible; null where it is no number or nothing helps.</param>
/// <param name="Unit">The unit of both; empty for plain counts and ratios to one.</param>
public sealed record WishFigures(decimal? Wanted, decimal? Possible, string Unit)
{
    /// <summary>Of several kinds of host: how many of each are possible, or how many in a rack.</summary>
    public ImmutableArray<(string Kind, int Count)> ByKind { get; init; } = [];

    /// <summary>Words that have to be allowed beside those wanted.</summary>
    public ImmutableArray<string> Beside { get; init; } = [];
}
