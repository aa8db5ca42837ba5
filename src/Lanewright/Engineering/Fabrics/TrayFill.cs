using Lanewright.Engineering.Pathways;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Tells whether the cables of a fabric fit into the trays and ducts of its hall, each on the one shortest way.</summary>
internal static class TrayFill
{
    /// <summary>The fullest pathway that holds more than it may; empty when all fit.</summary>
    /// <param name="ways">The ways of the hall.</param>
    /// <param name="tallies">The cables.</param>
    /// <param name="standards">The limits.</param>
    public static string Fault(HallWays ways, IEnumerable<LinkTally> tallies, StandardsLibrary standards)
    {
        var (cables, area) = (new int[ways.Graph.Segments.Length], new double[ways.Graph.Segments.Length]);
        foreach (var laid in tallies.SelectMany(t => t.Laid))
        {
            if (laid.FromRack == laid.ToRack) continue;
            foreach (var segment in ways.Way(laid.FromRack, laid.ToRack))
            {
                cables[segment] += laid.Cables;
                area[segment] += laid.SquareMillimetres;
            }
        }
        var fills = Enumerable.Range(0, cables.Length).Select(s => new SegmentFill(ways, s, cables[s], area[s], 0));
        var worst = fills.Where(f => f.Fill.Value > f.Most(standards).Value).MaxBy(f => f.Fill.Value);
        return worst is null
            ? ""
            : $"'{worst.Pathway.Name}' in {ways.Hall.Name} would hold {Numerals.Grouped(worst.Cables)} cables and be "
                + $"{Numerals.Shown(worst.Fill.Percent, "%")} full, and "
                + $"{Numerals.Shown(Share.From(worst.Most(standards).Value).Percent, "%")} is "
                + "the most";
    }
}
