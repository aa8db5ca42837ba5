using Lanewright.Engineering.Labels;
using Lanewright.Model;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Labels;

/// <summary>All labels of a plan in the order they are put on: racks, strips of feeds, devices, then both ends of each cable that is laid.
/// What stands or lies there already has its labels.</summary>
public static class LabelList
{
    /// <summary>The labels.</summary>
    public static IEnumerable<PrintedLabel> Of(DesignedPlan designed) =>
        Racks(designed).Concat(Devices(designed.Plan)).Concat(
            CableLabels.All(designed).Concat(LineCordLabels.All(designed))
                .Select(c => new PrintedLabel("cable", c.Near, c.Far, $"{c.Cable} {c.End}, {c.Medium}")));

    private static IEnumerable<PrintedLabel> Racks(DesignedPlan designed)
    {
        var book = designed.Racks.Value;
        foreach (var contents in book.Racks)
            yield return new PrintedLabel("rack", PlaceCode.Of(contents.Rack), contents.Rack.Name, contents.Rack.Hall.Site);
        foreach (var contents in book.Racks)
        {
            foreach (var feed in designed.Plan.Power.Where(f => f.Racks.Contains(contents.Rack.Index)))
                yield return new PrintedLabel("strip", PlaceCode.Of(contents.Rack), feed.Name,
                    $"{Numerals.Plain(feed.Volts)} V, {feed.Phases}-phase, breaker {feed.Breaker}");
        }
    }

    private static IEnumerable<PrintedLabel> Devices(Plan plan)
    {
        var places = new PlaceLabels(plan);
        foreach (var group in plan.Devices.Groups.Where(g => !g.IsExisting))
        {
            for (var device = group.First; device < group.First + group.Count; device++)
                yield return new PrintedLabel("device", places.Device(device), plan.Devices.Name(device), group.Model.Name);
        }
    }
}
