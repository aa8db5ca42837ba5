using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Standards;

/// <summary>A rule for the reflections of a channel: the more there are, the smaller each must be.</summary>
public sealed class ReflectanceTable
{
    private const string StepField = "reflectance-max@";

    /// <summary>Reads a table from its rows.</summary>
    public ReflectanceTable(FactSheet sheet)
    {
        Sheet = sheet;
        Steps = [.. ReadSteps(sheet).OrderBy(s => s.Count)];
        Floor = sheet.Decibels("counted-above");
        LimitForAny = sheet.Decibels(StepField + "any");
        FullLossAt = sheet.Decibels("full-loss-at");
        Substitute = sheet.Word("substitute");
    }

    /// <summary>All rows.</summary>
    public FactSheet Sheet { get; }

    /// <summary>The name, such as <c>table-D</c>.</summary>
    public string Name => Sheet.Subject;

    /// <summary>The steps, fewest reflections first; empty when one limit holds for any number or the cells are not known.</summary>
    public ImmutableArray<ReflectanceStep> Steps { get; }

    /// <summary>Reflections at or below this are not counted; null when all are.</summary>
    public Known<Decibels>? Floor { get; }

    /// <summary>One limit for any number of reflections; null when the number matters.</summary>
    public Known<Decibels>? LimitForAny { get; }

    /// <summary>When every reflection is at or below this, the full channel loss is allowed; null for other tables.</summary>
    public Known<Decibels>? FullLossAt { get; }

    /// <summary>Another table that is safe where this one's cells are not known; empty when there is none.</summary>
    public string Substitute { get; }

    /// <summary>The limit for a count: that of the next higher step. Null when the count is past the table.</summary>
    public Known<Decibels>? LimitFor(int count)
    {
        foreach (var step in Steps)
            if (count <= step.Count) return step.Limit;
        return null;
    }

    private static IEnumerable<ReflectanceStep> ReadSteps(FactSheet sheet)
    {
        foreach (var fact in sheet.Facts)
        {
            if (!fact.Field.StartsWith(StepField, StringComparison.Ordinal)) continue;
            if (Numerals.TryWhole(fact.Field.AsSpan(StepField.Length), out var count) && sheet.Decibels(fact.Field) is { } limit)
                yield return new ReflectanceStep((int)count, limit);
        }
    }
}
