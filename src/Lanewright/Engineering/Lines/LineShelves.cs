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
                var ends = design.Amplifiers.Where(a => a.Place is "booster" or "preamplifier").ToList();
                var places = ends.Count + (design.Multiplexes ? 1 : 0);
                var watts = ends.Sum(a => LineParts.PowerOf(plan.Catalogue, a).Value);
                foreach (var shelves in new[] { line.Statement.FromShelves, line.Statement.ToShelves })
                {
                    if (shelves.IsEmpty) continue;
                    var shelf = shelves[Math.Min(route, shelves.Length - 1)];
                    var before = found.GetValueOrDefault(shelf);
                    found[shelf] = (before.Places + places, Watts.From(before.Power.Value + watts));
                }
            }
        }
        return found;
    }
}
