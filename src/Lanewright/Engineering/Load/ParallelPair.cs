using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>Two parallel links from a switch to one of several switches above it: when one breaks, other switches that split per hop still
/// send as much that way, and the one that is left carries what both did.</summary>
/// <param name="Device">The lower switch.</param>
/// <param name="Upper">The upper one.</param>
/// <param name="FirstLink">The first of the two links.</param>
public sealed record ParallelPair(int Device, int Upper, int FirstLink)
{
    /// <summary>All such pairs of a network, in order of the lower devices.</summary>
    public static ImmutableArray<ParallelPair> Of(PlanNetwork network)
    {
        var pairs = ImmutableArray.CreateBuilder<ParallelPair>();
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
                if (count == 2) pairs.Add(new ParallelPair(device, upper, first));
        }
        return pairs.ToImmutable();
    }
}
