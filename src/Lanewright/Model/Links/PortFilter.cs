using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Model.Links;

/// <summary>A choice of cages by number, written <c>1..16, 20</c>.</summary>
/// <param name="Numbers">The numbers chosen, ascending.</param>
public sealed record PortFilter(ImmutableArray<int> Numbers)
{
    private const int LargestNumber = 4096;

    /// <summary>Reads a choice.</summary>
    public static bool TryRead(string text, out PortFilter filter)
    {
        filter = new PortFilter([]);
        var numbers = new SortedSet<int>();
        foreach (var part in text.Split(',', StringSplitOptions.TrimEntries))
        {
            var ends = part.Split("..", StringSplitOptions.TrimEntries);
            if (ends.Length is < 1 or > 2) return false;
            if (!Numerals.TryWhole(ends[0], out var from) || !Numerals.TryWhole(ends[^1], out var to)) return false;
            if (from < 1 || to < from || to > LargestNumber) return false;
            for (var i = from; i <= to; i++) numbers.Add((int)i);
        }
        filter = new PortFilter([.. numbers]);
        return true;
    }
}
