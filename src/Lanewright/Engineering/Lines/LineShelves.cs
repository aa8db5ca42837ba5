using System.Collections.Immutable;
using Lanewright.Model;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>What stands in the frames of lines: a multiplexer for each route and end, and its amplifiers.</summary>
public static class LineShelves
{
    /// <summary>Frames by device: places taken, and power that amplifiers draw.</summary>
    public static IReadOnlyDictionary<int, (int Places, Watts Power)> Of(Plan plan, LineBook lines)
    {
        var found = new SortedDictionary<int, (int Places, Watts Power)>();
        foreach (var line in lines.Lines)
        {
            for (var route = 0; route < line.Routes.Length; route++)
            {
                var design = line.Routes[route].Answer.Design;
                var ends = design.Amplifiers.Where(a => !a.IsBetween).ToList();
                var places = ends.Count + (design.Multiplexes ? 1 : 0);
                var watts = ends.Sum(a => LineParts.PowerOf(plan.Catalogue, a).Value);
                foreach (var shelves in new[] { line.Statement.FromShelves, line.Statement.ToShelves })
                {
                    if (At(shelves, route) is not (>= 0 and var shelf)) continue;
                    var before = found.GetValueOrDefault(shelf);
                    found[shelf] = (before.Places + places, Watts.From(before.Power.Value + watts));
                }
            }
        }
        return found;
    }

    /// <summary>The device of a route, of those named route by route; the last also serves all that follow, and none is -1.</summary>
    public static int At(ImmutableArray<int> places, int route) => places.IsEmpty ? -1 : places[Math.Min(route, places.Length - 1)];
}
