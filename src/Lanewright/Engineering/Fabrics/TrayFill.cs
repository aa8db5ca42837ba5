using Lanewright.Engineering.Pathways;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Tells whether the cables of a fabric fit into the trays and ducts it finds, each on the one shortest way.</summary>
internal static class TrayFill
{
    /// <summary>The fullest pathway that holds more than it may; empty when all fit.</summary>
    /// <param name="ways">The ways along them.</param>
    /// <param name="tallies">The cables.</param>
    /// <param name="standards">The limits.</param>
    public static string Fault(ShortestWays ways, IEnumerable<LinkTally> tallies, StandardsLibrary standards)
    {
        var (cables, area) = (new int[ways.Net.Stretches.Length], new double[ways.Net.Stretches.Length]);
        foreach (var laid in tallies.SelectMany(t => t.Laid))
        {
            if (laid.Question.From == laid.Question.To) continue;
            if (ways.Between(laid.Question) is not { } way) continue;
            foreach (var segment in way.Stretches)
            {
                cables[segment] += laid.Cables;
                area[segment] += laid.SquareMillimetres;
            }
        }
        var fills = Enumerable.Range(0, cables.Length).Select(s => new SegmentFill(ways.Net, s, cables[s], area[s], 0));
        var worst = fills.Where(f => f.Fill.Value > f.Most(standards).Value).MaxBy(f => f.Fill.Value);
        return worst is null
            ? ""
            : $"'{worst.Pathway.FullName}' would hold {Numerals.Grouped(worst.Cables)} cables and be "
                + $"{Numerals.Shown(worst.Fill.Percent, "%")} full, and "
                + $"{Numerals.Shown(Share.From(worst.Most(standards).Value).Percent, "%")} is "
                + "the most";
    }
}
