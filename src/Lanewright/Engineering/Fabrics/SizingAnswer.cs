using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>The answer to what is wanted.</summary>
/// <param name="Options">Options, cheapest over the years first; one a shape.</param>
/// <param name="Lost">The shapes without an option, and what rules each out.</param>
/// <param name="LowerBound">No design of any shape that keeps the wishes costs less over the years; null when none keeps them.</param>
public sealed record SizingAnswer(ImmutableArray<FabricOption> Options, ImmutableArray<ShapeLost> Lost, Money? LowerBound)
{
    /// <summary>Parts of the search that were looked into, and what pricing designs counts beside: the same on every machine.</summary>
    public long Looked { get; init; }
}
