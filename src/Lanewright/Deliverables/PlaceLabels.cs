using System.Text;
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
        if (plan.Devices.Rack(device) is not { } rack) return plan.Devices.Name(device) + ":" + Port(device, port);
        var cabinet = Word(rack.Row) + Numerals.Padded(rack.Number, 2);
        return $"{Word(rack.Hall.Name)}.{cabinet}-{Numerals.Padded(plan.Devices.Unit(device), 2)}:" + Port(device, port, digits: 2);
    }

    /// <summary>A port number on its own is padded; one behind the slot of a card stands as it is printed.</summary>
    private string Port(int device, PortPlace port, int digits)
    {
        var label = plan.Devices.Group(device).Layout.Slots[port.Cage].Label;
        if (Numerals.TryWhole(label, out var number)) label = Numerals.Padded(number, digits);
        return port.Ways > 1 ? label + "/" + Numerals.Whole(port.Part + 1) : label;
    }

    /// <summary>What is written on one end of a cable: this end, then the other.</summary>
    public static string CableEnd(string near, string far) => near + " / " + far;

    private static string Word(string name)
    {
        var word = new StringBuilder(name.Length);
        foreach (var c in name)
            if (char.IsAsciiLetterOrDigit(c)) word.Append(char.ToUpperInvariant(c));
        return word.Length == 0 ? "X" : word.ToString();
    }
}
