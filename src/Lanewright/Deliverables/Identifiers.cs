using Lanewright.Quantities;

namespace Lanewright.Deliverables;

/// <summary>Names of links, cables and classes in documents. They depend on names in the plan, never on the order of its text.</summary>
public static class Identifiers
{
    private const int Digits = 6;

    /// <summary>A link.</summary>
    public static string Link(int link) => "L" + Numerals.Padded(link + 1, Digits);

    /// <summary>A cable; empty for none.</summary>
    public static string Cable(int cable) => cable < 0 ? "" : "C" + Numerals.Padded(cable + 1, Digits);

    /// <summary>A demand by its number in the plan.</summary>
    public static string Demand(int index) => "D" + Numerals.Padded(index + 1, 2);

    /// <summary>A line between sites, by its number in the plan and its route.</summary>
    public static string Line(int index, int route) => "W" + Numerals.Padded(index + 1, 2) + ((char)('a' + route)).ToString();

    /// <summary>A channel of a line, by its number from 0.</summary>
    public static string LineChannel(int index, int route, int channel) => Line(index, route) + "-" + Numerals.Padded(channel + 1, 2);

    /// <summary>A cord of a line, by its number from 1.</summary>
    public static string LineCord(int index, int route, int number) => Line(index, route) + "-C" + Numerals.Padded(number, 3);

    /// <summary>A floor plan by its number.</summary>
    public static string Floor(int number) => "F" + Numerals.Padded(number, 2);

    /// <summary>A section of a tray or duct by its number.</summary>
    public static string Section(int number) => "X" + Numerals.Padded(number, 2);

    /// <summary>A sheet of panel fronts by its number.</summary>
    public static string Panels(int number) => "P" + Numerals.Padded(number, 2) + "-panels";

    /// <summary>A sheet of rack elevations by its number.</summary>
    public static string Elevation(int number) => "E" + Numerals.Padded(number, 2);

    /// <summary>A class of links and the share of it.</summary>
    public static string Class(int index, int share) =>
        "K" + Numerals.Padded(index + 1, 3) + (share > 0 ? ((char)('a' + share)).ToString() : "");
}
