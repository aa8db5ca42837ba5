using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>Several links up that look redundant and end on one and the same thing, so that its failure takes all of them.</summary>
/// <param name="Device">The device that has the links.</param>
/// <param name="Kind">What they share.</param>
/// <param name="Shared">The device shared; for a module the device's own cage; for a rack its index; -1 for a feed.</param>
/// <param name="Feed">The feed shared; empty otherwise.</param>
/// <param name="Links">How many links.</param>
/// <param name="FirstLink">The first of them.</param>
public sealed record SharedEnd(int Device, FailureKind Kind, int Shared, string Feed, int Links, int FirstLink)
{
    /// <summary>All such ends of a network, in order of the devices. The narrowest thing shared speaks: two ports on one switch are not
    /// said to be in one rack as well.</summary>
    public static ImmutableArray<SharedEnd> Of(PlanNetwork network)
    {
        var shared = ImmutableArray.CreateBuilder<SharedEnd>();
        for (var device = 0; device < network.Plan.Devices.Count; device++)
            if (network.UpLinks(device).Length > 1 && Find(network, device) is { } end) shared.Add(end);
        return shared.ToImmutable();
    }

    private static SharedEnd? Find(PlanNetwork network, int device)
    {
        var links = network.UpLinks(device);
        var upper = network.FarDevice(links[0], device);
        var cage = network.NearPort(links[0], device).Cage;
        var devices = network.Plan.Devices;
        var (rack, feeds) = (devices.RackIndex(upper), devices.Group(upper).Feeds);
        var (isDevice, isCage, isRack, isFeed) = (true, true, true, feeds.Length == 1);
        foreach (var link in links)
        {
            var far = network.FarDevice(link, device);
            isDevice &= far == upper;
            isCage &= network.NearPort(link, device).Cage == cage;
            isRack &= devices.RackIndex(far) == rack;
            isFeed &= devices.Group(far).Feeds.AsSpan().SequenceEqual(feeds.AsSpan());
        }
        // What takes the device itself down with it is no loss of redundancy.
        isRack &= rack >= 0 && devices.RackIndex(device) != rack;
        isFeed &= !devices.Group(device).Feeds.AsSpan().SequenceEqual(feeds.AsSpan());
        SharedEnd Of(FailureKind kind, int what, string feed = "") => new(device, kind, what, feed, network.UpLinks(device).Length,
            network.UpLinks(device)[0]);
        return isDevice ? Of(FailureKind.Switch, upper)
            : isCage ? Of(FailureKind.Module, cage)
            : isRack ? Of(FailureKind.Rack, rack)
            : isFeed ? Of(FailureKind.Feed, -1, feeds[0])
            : null;
    }
}
