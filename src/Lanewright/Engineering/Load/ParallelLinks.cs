using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>Two or more parallel links from a switch to one of several switches above it: when one breaks, other switches that split per
/// hop still send as much that way, and those that are left carry it.</summary>
/// <param name="Device">The lower switch.</param>
/// <param name="Upper">The upper one.</param>
/// <param name="FirstLink">The first of the links.</param>
/// <param name="Count">How many links.</param>
public sealed record ParallelLinks(int Device, int Upper, int FirstLink, int Count)
{
    /// <summary>All such links of a network, in order of the lower devices.</summary>
    public static ImmutableArray<ParallelLinks> Of(PlanNetwork network)
    {
        var found = ImmutableArray.CreateBuilder<ParallelLinks>();
        var byUpper = new SortedDictionary<int, (int First, int Count)>();
        for (var device = 0; device < network.Plan.Devices.Count; device++)
        {
            var links = network.UpLinks(device);
            if (links.Length < 3 || !network.IsSwitch(device)) continue;
            byUpper.Clear();
            foreach (var link in links)
            {
                var upper = network.FarDevice(link, device);
                byUpper[upper] = byUpper.TryGetValue(upper, out var seen) ? (seen.First, seen.Count + 1) : (link, 1);
            }
            if (byUpper.Count < 2) continue;
            foreach (var (upper, (first, count)) in byUpper)
                if (count > 1) found.Add(new ParallelLinks(device, upper, first, count));
        }
        return found.ToImmutable();
    }
}
