using System.Collections.Immutable;

namespace Lanewright.Engineering.Placement;

/// <summary>In which order the rows of a hall should stand so that cables cost least.</summary>
/// <param name="Hall">Index of the hall.</param>
/// <param name="Rows">Rows by name in the order of the places they have in the plan.</param>
/// <param name="Order">For each place the row that would stand there.</param>
/// <param name="Now">What the cables of these rows cost as the plan has them.</param>
/// <param name="Best">What they cost in the order found.</param>
/// <param name="NoLessThan">What no order goes below.</param>
public sealed record RowOrder(
    int Hall, ImmutableArray<string> Rows, ImmutableArray<string> Order, double Now, double Best, double NoLessThan)
{
    /// <summary>Part of both costs that is for ways longer than the shortest; it is taken to stay, so with it nothing is proven.</summary>
    public double Detours { get; init; }

    /// <summary>Whether no order is cheaper.</summary>
    public bool IsExact => IsLookedAt && Best - NoLessThan <= Rounding;

    /// <summary>Whether orders were looked at: of very many rows none is.</summary>
    public bool IsLookedAt { get; private init; } = true;

    /// <summary>Rows that are left as they stand because they are too many.</summary>
    public static RowOrder NotLookedAt(int hall, ImmutableArray<string> rows) => new(hall, rows, rows, 0, 0, 0) { IsLookedAt = false };

    private const double Rounding = 0.005;
}
