using Lanewright.Standards;

namespace Lanewright.Engineering.Links;

/// <summary>Which code one optical end puts on the wire, and who makes it.</summary>
/// <param name="OnWire">The code on the fibre.</param>
/// <param name="AtPort">The code the port itself must set.</param>
/// <param name="InModule">Whether the module makes the code of the wire.</param>
public sealed record FecSide(string OnWire, string AtPort, bool InModule)
{
    /// <summary>No code.</summary>
    public const string None = "none";

    /// <summary>The code of a module's application. A module with a code of its own wants none from NRZ lanes of the host: the trap
    /// of single-wavelength modules behind four of them. Lanes of four levels always carry the host's own.</summary>
    public static FecSide Of(InterfaceType type, HostInterface host, bool moduleHasOwn)
    {
        var gearbox = Gearbox.Between(host, type);
        if (gearbox.MakesCode || (moduleHasOwn && gearbox.MayMakeCode))
            return new FecSide(type.Fec, host.Fec == HostInterface.FecOfMedia ? None : host.Fec, InModule: true);
        var atPort = host.Fec == HostInterface.FecOfMedia ? type.Fec : BaseOf(host.Fec, type.Fec);
        return new FecSide(type.Fec, atPort, InModule: type.Fec.Contains('+'));
    }

    /// <summary>An inner code is the module's; the port sets the outer one.</summary>
    private static string BaseOf(string host, string type) => type == None ? None : host;
}
