using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>What stands between the contacts of an end and its light or wire.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Ratio">Lanes on either side, contacts first; empty when that says nothing.</param>
/// <param name="MakesCode">Whether it makes and ends an error-correcting code.</param>
internal sealed record LaneBlock(string Name, string Ratio, bool MakesCode = false)
{
    /// <summary>The block of an optical module.</summary>
    /// <param name="module">The module.</param>
    /// <param name="host">The electrical side of each of its ports.</param>
    /// <param name="type">The optical side of each.</param>
    /// <param name="ports">How many ports it has here.</param>
    public static LaneBlock Of(ModuleModel module, HostInterface host, InterfaceType type, int ports)
    {
        var code = FecSide.Of(type, host, module.HasOwnFec).InModule;
        // An added inner code raises the symbol rate without changing what a lane is.
        var isSame = host.Lanes == type.MediaLanes && host.Signal.Modulation == type.Signal.Modulation;
        var ratio = Numerals.Whole(host.Lanes * ports) + " : " + Numerals.Whole(type.MediaLanes * ports);
        return new LaneBlock(isSame ? Keeper(host) : "gearbox", ratio, code);
    }

    /// <summary>Attachment unit interfaces are retimed in the module; the plain serial ones are only driven.</summary>
    private static string Keeper(HostInterface host) => host.Name.Contains("AUI", StringComparison.Ordinal) ? "retimer" : "driver";
}
