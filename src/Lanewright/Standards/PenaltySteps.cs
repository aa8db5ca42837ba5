using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Standards;

/// <summary>A table of penalties: up to a boundary, so much. Beyond the last boundary there is no penalty but no specification
/// either.</summary>
/// <param name="Steps">Boundaries with penalties, mildest first.</param>
/// <param name="IsFloor">Whether boundaries are lower ones: the less, the worse.</param>
public sealed record PenaltySteps(ImmutableArray<(double Boundary, Known<Decibels> Penalty)> Steps, bool IsFloor)
{
    /// <summary>Reads the rows whose field begins with a word and carries the boundary behind it.</summary>
    public static PenaltySteps Read(FactSheet sheet, string field, bool isFloor = false)
    {
        var steps = sheet.Facts
            .Where(f => f.Field.StartsWith(field, StringComparison.Ordinal))
            .Select(f => (
                Boundary: Numerals.TryReal(f.Field.AsSpan(field.Length), out var at) ? at : double.NaN, Limit: sheet.Decibels(f.Field)))
            .Where(s => !double.IsNaN(s.Boundary) && s.Limit is not null)
            .Select(s => (s.Boundary, s.Limit ?? default));
        return new PenaltySteps([.. steps.OrderBy(s => isFloor ? -s.Boundary : s.Boundary)], isFloor);
    }

    /// <summary>Whether there are no rows.</summary>
    public bool IsEmpty => Steps.IsEmpty;

    /// <summary>The outermost boundary; null without rows.</summary>
    public Known<double>? Last => Steps.IsEmpty ? null : Steps[^1].Penalty.As(_ => Steps[^1].Boundary);

    /// <summary>The penalty of a value; beyond the last boundary that of the last step.</summary>
    public Decibels At(double value)
    {
        foreach (var (boundary, penalty) in Steps)
            if (IsFloor ? value >= boundary : value <= boundary) return penalty.Value;
        return Steps.IsEmpty ? default : Steps[^1].Penalty.Value;
    }
}
