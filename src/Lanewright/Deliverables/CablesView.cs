using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Pathways;
using Lanewright.Model;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>The cable schedule: a row a cable, and for a fan-out a row a leg.</summary>
public static class CablesView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("cables",
    [
        new("cable", 10), new("leg", 5, ColumnKind.Whole), new("link", 10), new("set", 22), new("medium", 8), new("part", 26),
        new("second-part", 12), new("type", 20),
        new("from-device", 22), new("from-rack", 18), new("from-unit", 9, ColumnKind.Whole), new("from-port", 9),
        new("to-device", 22), new("to-rack", 18), new("to-unit", 9, ColumnKind.Whole), new("to-port", 9),
        new("route-m", 9, ColumnKind.Real), new("ordered-m", 10, ColumnKind.Real), new("from-label", 40), new("to-label", 40),
        new("existing", 8), new("pathways", 40), new("moved-off", 20),
    ], () => Rows(designed.Plan, designed.Design, designed.Pathways.Value).Concat(OfLines(designed)));

    /// <summary>The cords of lines.</summary>
    private static IEnumerable<Cell[]> OfLines(DesignedPlan designed)
    {
        if (designed.Plan.LinePorts.IsEmpty) yield break;
        var names = new LinePointNames(designed.Plan);
        var book = designed.Lines.Value;
        for (var i = 0; i < book.Cords.Length; i++)
        {
            var cord = book.Cords[i];
            var line = book.Lines[cord.Line];
            var (here, there) = (names.Label(cord.From), names.Label(cord.To));
            yield return
            [
                Identifiers.LineCord(cord.Line, cord.Route, cord.Number), Cell.Empty,
                cord.Channel < 0 ? Identifiers.Line(cord.Line, cord.Route) : Identifiers.LineChannel(cord.Line, cord.Route, cord.Channel),
                line.Statement.Name, cord.Cord?.Fibre ?? "", cord.Cord?.Name ?? "", "",
                line.Routes[cord.Route].Answer.Design.TypeName,
                names.Device(cord.From), names.Rack(cord.From), Unit(designed.Plan, cord.From.Device), names.Port(cord.From),
                names.Device(cord.To), names.Rack(cord.To), Unit(designed.Plan, cord.To.Device), names.Port(cord.To),
                cord.Way is { } way ? Math.Round(way.Metres, 2) : Cell.Empty, cord.Ordered is { } ordered ? ordered.Metres : Cell.Empty,
                PlaceLabels.CableEnd(here, there), PlaceLabels.CableEnd(there, here), "",
                string.Join(" ", designed.Pathways.Value.Through(new CableKey(CableKind.LineCord, i))), "",
            ];
        }
    }

    private static IEnumerable<Cell[]> Rows(Plan plan, LinkDesign design, PathwayBook pathways)
    {
        var labels = new PlaceLabels(plan);
        var legsSeen = new int[design.Cables.Length];
        for (var link = 0; link < plan.Links.Count; link++)
        {
            var cable = design.CableOf(link);
            if (cable < 0 || design.SolutionOf(link) is not { } solution) continue;
            var row = Row(plan, labels, pathways, solution, link, cable, ++legsSeen[cable], design.Cables[cable].Links);
            // A patched cable is laid cord by cord: its ways and lengths are in the table of patches.
            var ways = solution.Through is null ? pathways.Through(link) : ["patched"];
            yield return [.. row, string.Join(" ", ways), Full(pathways, link)];
        }
    }

    private static Cell[] Row(
        Plan plan, PlaceLabels labels, PathwayBook pathways, Solution solution, int link, int cable, int leg, int legs)
    {
        var (from, to) = (plan.Links.FromDevice(link), plan.Links.ToDevice(link));
        var (fromPort, toPort) = (plan.Links.FromPort(link), plan.Links.ToPort(link));
        var (here, there) = (labels.Place(from, fromPort), labels.Place(to, toPort));
        var way = pathways.LengthOf(link);
        return
        [
            Identifiers.Cable(cable), legs > 1 ? leg : Cell.Empty, Identifiers.Link(link), plan.Statements[plan.Links.Statement(link)].Name,
            solution.MediumName, solution.Cable.Name, solution.FarCord?.Name, solution.TypeName,
            plan.Devices.Name(from), plan.Devices.Rack(from)?.Name, Unit(plan, from), labels.Port(from, fromPort),
            plan.Devices.Name(to), plan.Devices.Rack(to)?.Name, Unit(plan, to), labels.Port(to, toPort),
            way is { } metres && solution.Through is null ? Math.Round(metres.Metres, 2) : Cell.Empty,
            solution.Through is null ? solution.Length.Metres : Cell.Empty,
            PlaceLabels.CableEnd(here, there), PlaceLabels.CableEnd(there, here),
            plan.Statements[plan.Links.Statement(link)].IsExisting ? "yes" : "",
        ];
    }

    /// <summary>The pathway that had no room for it.</summary>
    private static string Full(PathwayBook pathways, int link) =>
        pathways.MoveOf(link) is { } move ? pathways.Fills[move.Full].Pathway.FullName : "";

    private static Cell Unit(Plan plan, int device) =>
        device >= 0 && plan.Devices.Unit(device) > 0 ? plan.Devices.Unit(device) : Cell.Empty;
}
