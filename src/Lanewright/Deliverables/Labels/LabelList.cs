using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Labels;
using Lanewright.Model;
using Lanewright.Model.Links;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Labels;

/// <summary>All labels of a plan in the order they are put on: racks, strips of feeds, devices, then both ends of each cable that is laid.
/// What stands or lies there already has its labels.</summary>
public static class LabelList
{
    /// <summary>The labels.</summary>
    public static IEnumerable<PrintedLabel> Of(DesignedPlan designed) =>
        Racks(designed).Concat(Devices(designed.Plan)).Concat(Cables(designed.Plan, designed.Design));

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

    /// <summary>A plug that several links share has one label; a leg has its own.</summary>
    private static IEnumerable<PrintedLabel> Cables(Plan plan, LinkDesign design)
    {
        var places = new PlaceLabels(plan);
        var firstOf = new int[design.Cables.Length];
        for (var link = 0; link < plan.Links.Count; link++)
        {
            var cable = design.CableOf(link);
            if (cable < 0 || design.SolutionOf(link) is not { } solution) continue;
            if (plan.Statements[plan.Links.Statement(link)].IsExisting) continue;
            var isFirst = firstOf[cable] == 0;
            if (isFirst) firstOf[cable] = link + 1;
            var first = firstOf[cable] - 1;
            var (from, to) = (plan.Links.FromDevice(link), plan.Links.ToDevice(link));
            var (fromPort, toPort) = (plan.Links.FromPort(link), plan.Links.ToPort(link));
            var isFromShared = design.Cables[cable].Links > 1 && SharesFrom(plan, first);
            var isToShared = design.Cables[cable].Links > 1 && !isFromShared;
            var here = places.Place(from, isFromShared ? Whole(fromPort) : fromPort);
            var there = places.Place(to, isToShared ? Whole(toPort) : toPort);
            var remark = $"{Identifiers.Cable(cable)}  {solution.MediumName} {solution.Length}";
            if (isFirst || !isFromShared) yield return new PrintedLabel("cable", here, there, remark);
            if (isFirst || !isToShared) yield return new PrintedLabel("cable", there, here, remark);
        }
    }

    /// <summary>Whether the links of a cable meet in one cage at the side they come from, rather than at the other.</summary>
    private static bool SharesFrom(Plan plan, int first) => plan.Links.FromPort(first).Ways > 1;

    private static PortPlace Whole(PortPlace port) => new(port.Cage, 0, 1);
}
