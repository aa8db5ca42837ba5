using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>Two ways between the ends of a line, and what stands against taking both.</summary>
/// <param name="Way">The spans of the one.</param>
/// <param name="OtherWay">The spans of the other.</param>
/// <param name="Share">Spans and ducts that both are in.</param>
public sealed record LineConflict(ImmutableArray<string> Way, ImmutableArray<string> OtherWay, ImmutableArray<string> Share)
{
    private const int MostTold = 12;

    /// <summary>Why there is no pair, in words.</summary>
    public static string Words(ImmutableArray<LineConflict> conflicts)
    {
        if (conflicts.IsEmpty) return "there is no other way";
        var told = conflicts.Take(MostTold).Select(c =>
            $"{Named(c.Way)} and {Named(c.OtherWay)} share {string.Join(" and ", c.Share)}");
        var more = conflicts.Length > MostTold ? $"; and {Numerals.Whole(conflicts.Length - MostTold)} more pairs" : "";
        return $"every two ways share something: {string.Join("; ", told)}{more}";
    }

    private static string Named(ImmutableArray<string> way) => "(" + string.Join(", ", way) + ")";
}
