using Lanewright.Standards;

namespace Lanewright.Engineering.Links;

/// <summary>Whether a module can turn the lanes of a host interface into those of an interface type, and how: the one place that says
/// so.</summary>
/// <param name="Kind">What it does.</param>
/// <param name="Note">Why no module does it; empty when one can.</param>
/// <param name="MayMakeCode">Whether some modules make the code of the media themselves where others leave it to the host.</param>
public sealed record Gearbox(GearboxKind Kind, string Note = "", bool MayMakeCode = false)
{
    /// <summary>Whether there is such a module.</summary>
    public bool Exists => Kind != GearboxKind.None;

    /// <summary>Whether every such module makes the code of the media itself.</summary>
    public bool MakesCode => Kind == GearboxKind.CodeMaking;

    /// <summary>What stands between a host interface and an interface type.</summary>
    /// <param name="host">The electrical side of one port.</param>
    /// <param name="media">The optical side.</param>
    /// <param name="ports">Ports that the lanes of the optical side are dealt out to.</param>
    public static Gearbox Between(HostInterface host, InterfaceType media, int ports = 1)
    {
        if (host.Rate * ports != media.Rate)
        {
            var times = ports > 1 ? $"{ports} x " : "";
            return None($"{times}{host.Name} and {media.Name} do not carry the same: {times}{host.Rate} and {media.Rate}");
        }
        if (media.MediaLanes % ports != 0) return None($"{media.Name} has {media.MediaLanes} lanes, not to be dealt out to {ports} ports");
        var lanes = media.MediaLanes / ports;
        // A coherent module maps the signal of its host into a frame with a code of its own, whatever the lanes.
        if (media.Signal.Modulation == Modulation.Coherent) return new Gearbox(GearboxKind.CodeMaking);
        if (host.Lanes < lanes)
        {
            return None($"{Lanes(host.Lanes, host.Signal)} of {host.Name} would have to become {Lanes(lanes, media.Signal)} of "
                + $"{media.Name}: a reverse gearbox stands on a board, where the code can change, never in a module");
        }
        if (media.CodeMadeBehind.Contains(host.Name)) return new Gearbox(GearboxKind.CodeMaking);
        return Passing(host, media, lanes);
    }

    /// <summary>Lanes may be put together bit by bit only where the code and all bits of it pass through.</summary>
    private static Gearbox Passing(HostInterface host, InterfaceType media, int lanes)
    {
        var isInner = media.Fec.StartsWith(host.Fec + "+", StringComparison.Ordinal);
        var passes = host.Fec == HostInterface.FecOfMedia || host.Fec == media.Fec || isInner;
        var (hostBits, mediaBits) = (host.Lanes * host.Signal.BitsPerSecond, lanes * media.Signal.BitsPerSecond);
        // An inner code is made in the module and adds its own bits.
        if (!passes || host.Lanes % lanes != 0 || (isInner ? hostBits >= mediaBits : hostBits != mediaBits))
        {
            return None($"{Lanes(host.Lanes, host.Signal)} of {host.Name} and {Lanes(lanes, media.Signal)} of {media.Name} are not "
                + $"the same bits, and no module is known here that ends the host's code and makes {media.Fec} itself");
        }
        var mayMakeCode = host.Fec == HostInterface.FecOfMedia && media.Fec != FecSide.None;
        return new Gearbox(host.Lanes == lanes ? GearboxKind.Straight : GearboxKind.Forward, MayMakeCode: mayMakeCode);
    }

    private static Gearbox None(string note) => new(GearboxKind.None, note);

    private static string Lanes(int count, LaneSignal signal) => $"{(count == 1 ? "1 lane" : $"{count} lanes")} at {signal}";
}
