using Lanewright.Engineering.Lines;
using Lanewright.Model;

namespace Lanewright.Deliverables;

/// <summary>Ends of the cords of lines as documents name them.</summary>
internal sealed class LinePointNames(Plan plan)
{
    private readonly PlaceLabels labels = new(plan);

    /// <summary>The device, or the site where the plan names no device.</summary>
    public string Device(LinePoint point) => point.Device < 0 ? point.Site : plan.Devices.Name(point.Device);

    /// <summary>The rack; empty where there is none.</summary>
    public string Rack(LinePoint point) => point.Device < 0 ? "" : plan.Devices.Rack(point.Device)?.Name ?? "";

    /// <summary>The port, or what it is plugged into.</summary>
    public string Port(LinePoint point) => point.Port is { } port ? labels.Port(point.Device, port) : point.What;

    /// <summary>What is written on the cord there.</summary>
    public string Label(LinePoint point) => point.Port is { } port ? labels.Place(point.Device, port)
        : (point.Device < 0 ? point.Site : labels.Device(point.Device)) + ":" + point.What;
}
