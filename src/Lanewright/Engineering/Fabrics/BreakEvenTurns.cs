using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Puts stretches together that are too narrow to be told one by one: options that take turns.</summary>
public static class BreakEvenTurns
{
    /// <summary>So many stretches are told one by one.</summary>
    private const int MostTold = 8;

    /// <summary>A stretch at least so wide, as a part of the range, is told by itself in any case.</summary>
    private const decimal Wide = 0.04m;

    /// <summary>How often the cheapest option changes: stretches that differ only in what is proven of them are one.</summary>
    public static int Changes(BreakEven found) => Merged(found.Stretches).Count - 1;

    /// <summary>The stretches as people are told them.</summary>
    public static ImmutableArray<BreakEvenStretch> Told(BreakEven found)
    {
        var merged = Merged(found.Stretches);
        if (merged.Count <= MostTold) return [.. merged];
        var range = found.Stretches[^1].To - found.Stretches[0].From;
        var told = new List<BreakEvenStretch>();
        var narrow = new List<BreakEvenStretch>();
        foreach (var stretch in merged)
        {
            if (stretch.To - stretch.From < Wide * range)
            {
                narrow.Add(stretch);
                continue;
            }
            Close(narrow, told);
            told.Add(stretch);
        }
        Close(narrow, told);
        return [.. told];
    }

    /// <summary>Neighbours of one winner as one stretch, proven or not.</summary>
    private static List<BreakEvenStretch> Merged(ImmutableArray<BreakEvenStretch> stretches)
    {
        var merged = new List<BreakEvenStretch>();
        var proven = 0m;
        foreach (var stretch in stretches)
        {
            var own = stretch.IsProven ? stretch.To - stretch.From : 0;
            if (merged is not [.., var last] || last.Shape != stretch.Shape || last.Name != stretch.Name)
            {
                merged.Add(stretch);
                proven = own;
                continue;
            }
            proven += own;
            var range = stretch.To - last.From;
            merged[^1] = last with
            {
                To = stretch.To,
                CostTo = stretch.CostTo,
                IsProven = last.IsProven && stretch.IsProven,
                ProvenShare = Share.From(range > 0 ? (double)Math.Min(1, proven / range) : 1),
                Between = [.. last.Between, (last.To, last.CostTo), (stretch.From, stretch.CostFrom), .. stretch.Between],
            };
        }
        return merged;
    }

    private static void Close(List<BreakEvenStretch> narrow, List<BreakEvenStretch> told)
    {
        if (narrow.Count <= 2) told.AddRange(narrow);
        else told.Add(Together(narrow));
        narrow.Clear();
    }

    private static BreakEvenStretch Together(List<BreakEvenStretch> narrow)
    {
        var names = narrow.Select(s => s.Name).Where(n => n.Length > 0).Distinct().ToList();
        var most = narrow.GroupBy(s => (s.Shape, s.Name)).MaxBy(g => g.Sum(s => s.To - s.From))?.Key ?? (null, "");
        return new BreakEvenStretch(narrow[0].From, narrow[^1].To, most.Shape, most.Name, narrow[0].CostFrom, narrow[^1].CostTo)
        {
            IsProven = narrow.All(s => s.IsProven),
            Others = [.. names.Where(n => n != most.Name)],
            Turns = narrow.Count - 1,
            Between =
            [
                .. narrow.SelectMany(s => s.Between.Prepend((s.From, s.CostFrom)).Append((s.To, s.CostTo))).Distinct().OrderBy(b => b.Item1)
                    .Where(b => b.Item1 > narrow[0].From && b.Item1 < narrow[^1].To),
            ],
        };
    }
}
