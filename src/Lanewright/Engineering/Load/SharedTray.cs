using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;

namespace Lanewright.Engineering.Load;

/// <summary>Links up to several switches whose cables all lie in one tray, other than the one over the device's own rack.</summary>
/// <param name="Device">The device that has the links.</param>
/// <param name="Tray">The tray.</param>
/// <param name="Links">How many links.</param>
public sealed record SharedTray(int Device, Pathway Tray, int Links)
{
    /// <summary>All such devices of a network, in order.</summary>
    public static IEnumerable<SharedTray> Of(PlanNetwork network, PathwayBook book)
    {
        var devices = network.Plan.Devices;
        for (var device = 0; device < devices.Count; device++)
        {
            if (devices.Rack(device) is not { } rack || Uppers(network, device) is not { Count: > 1 } uppers) continue;
            if (uppers.Any(u => devices.RackIndex(u) < 0 || devices.RackIndex(u) == rack.Index)) continue;
            var common = network.UpLinks(device).ToArray()
                .Select(link => book.PathwaysOf(link)).Aggregate((all, own) => [.. all.Intersect(own)]);
            var own = book.OverRack(rack);
            if (common.FirstOrDefault(p => p != own) is { } tray) yield return new SharedTray(device, tray, network.UpLinks(device).Length);
        }
    }

    private static List<int> Uppers(PlanNetwork network, int device)
    {
        var uppers = new SortedSet<int>();
        foreach (var link in network.UpLinks(device)) uppers.Add(network.FarDevice(link, device));
        return [.. uppers];
    }
}
