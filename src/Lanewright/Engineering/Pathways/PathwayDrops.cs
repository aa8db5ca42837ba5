using System.Collections.Immutable;
using Lanewright.Model.Places;

namespace Lanewright.Engineering.Pathways;

/// <summary>Where the cables of a place come down from pathways.</summary>
internal static class PathwayDrops
{
    /// <summary>The pathway of a side that is nearest to a place, however far, and all others of it that cables reach unsupported, the
    /// nearest first: the shortest way may begin in any of them. A riser serves what it is nearest to alone.</summary>
    /// <param name="place">The place.</param>
    /// <param name="pathways">All pathways of its hall.</param>
    /// <param name="side">Those of the side; at least one.</param>
    /// <param name="reach">Metres in plan that cables go unsupported.</param>
    public static ImmutableArray<(int Pathway, WayPoint At, double Metres)> Of(
        WayPoint place, ImmutableArray<Pathway> pathways, ImmutableArray<int> side, double reach)
    {
        var nearest = (Pathway: -1, At: default(WayPoint), Metres: double.PositiveInfinity);
        var within = new List<(int Pathway, WayPoint At, double Metres)>();
        foreach (var i in side)
        {
            var at = PathwayJoins.Nearest(pathways[i], place);
            var drop = (Pathway: i, At: at, Metres: at.FlatTo(place));
            if (drop.Metres < nearest.Metres - PathwayJoins.Touch) nearest = drop;
            if (drop.Metres <= reach && !pathways[i].IsRiser) within.Add(drop);
        }
        within.RemoveAll(d => d.Pathway == nearest.Pathway);
        return Distinct(pathways, [nearest, .. within.OrderBy(d => d.Metres)]);
    }

    /// <summary>Where a nearer pathway leads to the same point, cables lie in that one and do not hang beside it: so of trays in line a
    /// place is under one, and trays that cross over it are one drop.</summary>
    private static ImmutableArray<(int Pathway, WayPoint At, double Metres)> Distinct(
        ImmutableArray<Pathway> pathways, List<(int Pathway, WayPoint At, double Metres)> drops) =>
        [.. drops.Where((drop, i) => !drops.Take(i).Any(nearer => PathwayJoins.LeadsTo(pathways[nearer.Pathway], drop.At)))];
}
