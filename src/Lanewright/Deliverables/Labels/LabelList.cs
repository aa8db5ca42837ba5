using Lanewright.Engineering.Labels;
using Lanewright.Engineering.Plant;
using Lanewright.Model;
using Lanewright.Model.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Labels;

/// <summary>All labels of a plan in the order they are put on: racks, strips of feeds, trays and ducts, devices, both ends of each trunk
/// and its cassettes, then both ends of each cable that is laid. What stands or lies there already has its labels.</summary>
public static class LabelList
{
    /// <summary>The labels.</summary>
    public static IEnumerable<PrintedLabel> Of(DesignedPlan designed) =>
        Racks(designed).Concat(Pathways(designed.Plan)).Concat(Devices(designed.Plan)).Concat(Trunks(designed)).Concat(
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

    private static IEnumerable<PrintedLabel> Pathways(Plan plan) =>
        plan.Building.Pathways.Select(p => new PrintedLabel(p.IsDuct ? "duct" : "tray", PlaceCode.Of(p), p.Name,
            p.IsDuct ? $"{p.Hall.FullName}, inside {p.Width}" : $"{p.Hall.FullName}, {p.Width} x {p.Depth}"));

    /// <summary>Of each trunk both ends, each with its own place and the far one; of each cassette its ports and where they lead.</summary>
    private static IEnumerable<PrintedLabel> Trunks(DesignedPlan designed)
    {
        var places = new PlaceLabels(designed.Plan);
        foreach (var trunk in designed.Plan.Trunks.Where(t => !t.IsExisting))
        {
            for (var number = 0; number < trunk.Count; number++)
            {
                foreach (var isFar in new[] { false, true })
                {
                    var (here, there) = (Place(trunk, number, isFar), Place(trunk, number, !isFar));
                    var name = trunk.NameOf(number + 1);
                    var fibres = $"{name} {(isFar ? "to" : "from")}, {trunk.Fibres} x {trunk.Cable.Fibre} "
                        + $"type {TrunkFronts.CableType(trunk)}";
                    yield return new PrintedLabel("trunk", here, there, fibres);
                    if (trunk.CassetteAt(isFar) is null) continue;
                    var ports = $"{here}/1-{Numerals.Whole(trunk.Fibres / 2)}";
                    yield return new PrintedLabel("cassette", ports, there, $"{name}, {TrunkFronts.CassetteType(trunk, isFar)}");
                }
            }
        }

        string Place(TrunkGroup trunk, int number, bool isFar) =>
            places.PanelPort(isFar ? trunk.To : trunk.From, designed.Plant.Value.SlotOf(trunk, isFar) + number, 0);
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
