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
    /// <param name="application">What each of its ports runs.</param>
    /// <param name="ports">How many ports it has here.</param>
    public static LaneBlock Of(ModuleModel module, Application application, int ports)
    {
        var type = application.Optical!;
        var (host, media) = (application.Host.Lanes, type.MediaLanes);
        var code = FecSide.Of(module, application).InModule;
        // An added inner code raises the symbol rate without changing what a lane is.
        var isSame = host == media && application.Host.Signal.Modulation == type.Signal.Modulation;
        var ratio = Numerals.Whole(host * ports) + " : " + Numerals.Whole(media * ports);
        return new LaneBlock(isSame ? Keeper(application.Host) : "gearbox", ratio, code);
    }

    /// <summary>Attachment unit interfaces are retimed in the module; the plain serial ones are only driven.</summary>
    private static string Keeper(HostInterface host) => host.Name.Contains("AUI", StringComparison.Ordinal) ? "retimer" : "driver";
}
