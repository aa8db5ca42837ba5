using Lanewright.Engineering.Labels;
using Lanewright.Model;
using Lanewright.Model.Links;
using Lanewright.Quantities;

namespace Lanewright.Deliverables;

/// <summary>Identifiers of ports and cable ends in the manner of TIA-606: space, cabinet, unit counted from the bottom, port.</summary>
public sealed class PlaceLabels(Plan plan)
{
    /// <summary>A port as printed on a device: the cage, and its part when the cage is split.</summary>
    public string Port(int device, PortPlace port) => Port(device, port, digits: 1);

    /// <summary>A port by its place in the building; by its device's name when the device has no place.</summary>
    public string Place(int device, PortPlace port)
    {
        if (plan.Devices.Rack(device) is null) return plan.Devices.Name(device) + ":" + Port(device, port);
        return Device(device) + ":" + Port(device, port, digits: 2);
    }

    /// <summary>A port at the front of a panel: the place in it, and the duplex port of a cassette there.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="slot">The place in it, from 1.</param>
    /// <param name="port">The duplex port; 0 for an open array, or where it is not known.</param>
    public string PanelPort(int panel, int slot, int port) =>
        $"{Device(panel)}:{Numerals.Padded(slot, 2)}" + (port > 0 ? "/" + Numerals.Whole(port) : "");

    /// <summary>A device by its place in the building; by its name when it has none.</summary>
    public string Device(int device) => plan.Devices.Rack(device) is { } rack
        ? $"{PlaceCode.Of(rack)}-{Numerals.Padded(plan.Devices.Unit(device), 2)}"
        : plan.Devices.Name(device);

    /// <summary>A port number on its own is padded; one behind the slot of a card stands as it is printed.</summary>
    private string Port(int device, PortPlace port, int digits)
    {
        var label = plan.Devices.Group(device).Layout.Slots[port.Cage].Label;
        if (Numerals.TryWhole(label, out var number)) label = Numerals.Padded(number, digits);
        return port.Ways > 1 ? label + "/" + Numerals.Whole(port.Part + 1) : label;
    }

    /// <summary>What is written on one end of a cable: this end, then the other.</summary>
    public static string CableEnd(string near, string far) => near + " / " + far;
}
