using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>Words that ribbons of all media share.</summary>
internal static class RibbonWords
{
    /// <summary>The caution on anything that carries laser light.</summary>
    public const string LaserCaution =
        "Laser light here is invisible. Never look into an open port, a plug or a broken fibre. The label of the equipment and local "
            + "rules prevail.";

    /// <summary>The words over a port.</summary>
    public static ImmutableArray<string> Port(string heading, EndSpec spec, BitRate rate, string fec, bool negotiates) =>
    [
        heading,
        spec.Cage.FormFactor.Name == "RJ45" ? "RJ45 socket" : $"{spec.Cage.FormFactor.Name} cage, {spec.Cage.LanesText}",
        "run as " + new PortMode(spec.Ways, rate),
        fec == FecSide.None ? "no FEC at the port" : "FEC " + fec,
        "auto-negotiation " + (negotiates ? "on" : "off"),
    ];

    /// <summary>A heading for one end or several.</summary>
    public static string Heading(string one, string many, int ends) =>
        ends == 1 ? one + " B" : $"{many} B1 to B{Numerals.Whole(ends)}, each";

    /// <summary>The cable between.</summary>
    public static ImmutableArray<string> Cable(Solution solution, bool isExisting, IEnumerable<string> more) =>
    [
        isExisting ? "Cable, already in place" : "Cable",
        solution.Cable.Name,
        solution.Cable.Title,
        .. more.Where(m => m.Length > 0),
    ];

    /// <summary>What a lane carries, or that its symbol rate is not known.</summary>
    public static string Signal(LaneSignal signal) =>
        signal.Baud == default ? $"{LaneSignal.Name(signal.Modulation)}, symbol rate not known"
            : $"{Numerals.Exact(signal.Baud.Gigabaud)} GBd {LaneSignal.Name(signal.Modulation)}";

    /// <summary>A number of lanes each way.</summary>
    public static string Lanes(int count) => count == 1 ? "1 lane each way" : Numerals.Whole(count) + " lanes each way";

    /// <summary>A name, with how many times it runs side by side.</summary>
    public static string Times(int count, string name) => count == 1 ? name : Numerals.Whole(count) + " x " + name;

    /// <summary>The electrical side of an end.</summary>
    public static string Host(int ports, string name, int lanes, LaneSignal signal) =>
        $"{Times(ports, name)}: {Lanes(lanes * ports)}, {Signal(signal)}";

    /// <summary>The names of the ports of a cage.</summary>
    public static ImmutableArray<string> PortNames(int ways) =>
        ways < 2 ? [""] : [.. Enumerable.Range(1, ways).Select(p => "/" + Numerals.Whole(p))];

    /// <summary>The name of one far end among several.</summary>
    public static string FarName(int index, int ends) => ends == 1 ? "B" : "B" + Numerals.Whole(index + 1);

    /// <summary>The dimension line of the code that runs from end to end.</summary>
    public static Span Code(int row, string nearCode, Stop near, string farCode, Stop far)
    {
        if (nearCode != farCode) return new Span(row, near, far, $"FEC differs: {nearCode} at A, {farCode} at B", IsAlert: true);
        if (nearCode == FecSide.None) return new Span(row, Stop.NearPort, Stop.FarPort, "no error correction (FEC) on this link");
        return new Span(row, near, far, $"FEC {nearCode}: made and ended in {Maker(near, "A")} and {Maker(far, "B")}");
    }

    private static string Maker(Stop stop, string end) => (stop is Stop.NearPort or Stop.FarPort ? "port " : "module ") + end;
}
