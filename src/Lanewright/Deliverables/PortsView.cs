using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Lines;
using Lanewright.Model.Links;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>The port map: every port in use, and the free cages of switches.</summary>
public static class PortsView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("ports",
    [
        new("device", 22), new("group", 16), new("model", 20), new("rack", 18), new("unit", 6, ColumnKind.Whole), new("port", 8),
        new("breakout", 10), new("rate", 8), new("lanes", 8), new("far-device", 22), new("far-port", 9), new("module", 22),
        new("medium", 8), new("cable", 10), new("link", 10), new("fec", 14), new("autonegotiation", 15), new("set", 22),
    ], () => Rows(designed));

    private static IEnumerable<Cell[]> Rows(DesignedPlan designed)
    {
        var (plan, design) = (designed.Plan, designed.Design);
        var labels = new PlaceLabels(plan);
        var ofLines = LineEnds(plan);
        var ends = EndsByDevice(plan, out var starts);
        for (var device = 0; device < plan.Devices.Count; device++)
        {
            var group = plan.Devices.Group(device);
            var slots = group.Layout.Slots;
            var used = ends.AsMemory(starts[device], starts[device + 1] - starts[device]);
            used.Span.Sort((a, b) => (a.Port.Cage, a.Port.Part).CompareTo((b.Port.Cage, b.Port.Part)));
            var at = 0;
            for (var cage = 0; cage < slots.Length; cage++)
            {
                var first = at;
                for (; at < used.Length && used.Span[at].Port.Cage == cage; at++)
                    yield return Used(plan, design, labels, device, used.Span[at]);
                if (ofLines.TryGetValue((device, cage), out var line)) yield return OfLine(designed, labels, line.Port, line.IsFrom);
                else if (first == at && group.Model.Kind != DeviceKind.Host) yield return Free(plan, device, slots[cage].Label);
            }
        }
    }

    /// <summary>All link ends, device by device.</summary>
    private static End[] EndsByDevice(Plan plan, out int[] starts)
    {
        var links = plan.Links;
        starts = new int[plan.Devices.Count + 1];
        for (var link = 0; link < links.Count; link++)
        {
            starts[links.FromDevice(link) + 1]++;
            starts[links.ToDevice(link) + 1]++;
        }
        for (var i = 1; i < starts.Length; i++) starts[i] += starts[i - 1];
        var next = (int[])starts.Clone();
        var ends = new End[links.Count * 2];
        for (var link = 0; link < links.Count; link++)
        {
            ends[next[links.FromDevice(link)]++] = new End(link, IsFrom: true, links.FromPort(link));
            ends[next[links.ToDevice(link)]++] = new End(link, IsFrom: false, links.ToPort(link));
        }
        return ends;
    }

    private static Cell[] Used(Plan plan, LinkDesign design, PlaceLabels labels, int device, End end)
    {
        var links = plan.Links;
        var far = end.IsFrom ? links.ToDevice(end.Link) : links.FromDevice(end.Link);
        var farPort = end.IsFrom ? links.ToPort(end.Link) : links.FromPort(end.Link);
        var solution = design.SolutionOf(end.Link);
        var statement = plan.Statements[links.Statement(end.Link)];
        var module = end.IsFrom ? solution?.FromModule : solution?.ToModule;
        var mode = new PortMode(end.Port.Ways, statement.Rate);
        return
        [
            plan.Devices.Name(device), plan.Devices.Group(device).Name, plan.Devices.Group(device).Model.Name,
            plan.Devices.Rack(device)?.Name, Unit(plan, device), labels.Port(device, end.Port), mode.ToString(), statement.Rate.ToString(),
            Lanes(solution, end), plan.Devices.Name(far), labels.Port(far, farPort), module?.Name ?? "",
            solution?.MediumName, Identifiers.Cable(design.CableOf(end.Link)), Identifiers.Link(end.Link),
            end.IsFrom ? solution?.FromFec : solution?.ToFec,
            solution is null ? "" : solution.Autonegotiates ? "on" : "off", statement.Name,
        ];
    }

    /// <summary>Cages that hold modules of lines.</summary>
    private static Dictionary<(int Device, int Cage), (LinePort Port, bool IsFrom)> LineEnds(Plan plan)
    {
        var ends = new Dictionary<(int, int), (LinePort, bool)>();
        foreach (var port in plan.LinePorts)
        {
            ends[(port.FromDevice, port.FromPort.Cage)] = (port, true);
            ends[(port.ToDevice, port.ToPort.Cage)] = (port, false);
        }
        return ends;
    }

    private static Cell[] OfLine(DesignedPlan designed, PlaceLabels labels, LinePort line, bool isFrom)
    {
        var plan = designed.Plan;
        var (device, port) = isFrom ? (line.FromDevice, line.FromPort) : (line.ToDevice, line.ToPort);
        var (far, farPort) = isFrom ? (line.ToDevice, line.ToPort) : (line.FromDevice, line.FromPort);
        var result = designed.Lines.Value.Lines[line.Line];
        var route = designed.Lines.Value.RouteOf(line);
        var type = route?.Answer.Design.TypeName ?? "";
        var module = isFrom ? route?.Terminals.From : route?.Terminals.To;
        var cord = designed.Lines.Value.Cords.FirstOrDefault(c => c.Line == line.Line && c.Route == line.Route && c.Channel == line.Channel
            && (c.From.Device == device && c.From.Port == port));
        var mode = new PortMode(port.Ways, result.Statement.Rate);
        var lanes = module?.Applications.FirstOrDefault(a => a.MediaName == type)?.Host.Lanes ?? 0;
        return
        [
            plan.Devices.Name(device), plan.Devices.Group(device).Name, plan.Devices.Group(device).Model.Name,
            plan.Devices.Rack(device)?.Name, Unit(plan, device), labels.Port(device, port), mode.ToString(),
            result.Statement.Rate.ToString(), lanes > 1 ? $"1-{lanes}" : lanes == 1 ? "1" : "", plan.Devices.Name(far),
            labels.Port(far, farPort), module?.Name ?? "", "line",
            cord is null ? "" : Identifiers.LineCord(cord.Line, cord.Route, cord.Number),
            Identifiers.LineChannel(line.Line, line.Route, line.Channel),
            plan.Standards.Wavelength(type)?.Code ?? plan.Standards.Interface(type)?.Fec ?? "", "off", result.Statement.Name,
        ];
    }

    private static Cell[] Free(Plan plan, int device, string port) =>
    [
        plan.Devices.Name(device), plan.Devices.Group(device).Name, plan.Devices.Group(device).Model.Name,
        plan.Devices.Rack(device)?.Name, Unit(plan, device), port, "", "", "", "free", "", "", "", "", "", "", "", "",
    ];

    /// <summary>Which lanes of the cage the port runs on, counted from 1.</summary>
    private static string Lanes(Solution? solution, End end)
    {
        var count = LanesPerPort(solution, end.IsFrom);
        if (count == 0) return "";
        var first = (end.Port.Part * count) + 1;
        return count == 1 ? Numerals.Whole(first) : $"{first}-{first + count - 1}";
    }

    private static int LanesPerPort(Solution? solution, bool isFrom)
    {
        if (solution is null) return 0;
        var application = isFrom ? solution.FromApplication : solution.ToApplication;
        if (application is not null) return application.Host.Lanes;
        if (solution.Cable is not AssemblyModel cable) return 0;
        return cable.Type?.Lanes ?? cable.Shows(isFrom).Lanes;
    }

    private static Cell Unit(Plan plan, int device) => plan.Devices.Unit(device) > 0 ? plan.Devices.Unit(device) : Cell.Empty;

    private readonly record struct End(int Link, bool IsFrom, PortPlace Port);
}
