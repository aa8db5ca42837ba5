using Lanewright.Model;
using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Load;

/// <summary>How far each device of a network is from the hosts nearest to it.</summary>
internal static class DeviceTiers
{
    /// <summary>Links to the nearest host for each device; -1 where none is reached or the device has no link of the network.</summary>
    public static int[] Of(Plan plan, bool[] contains)
    {
        var (start, near) = Neighbours(plan, contains);
        var tiers = new int[plan.Devices.Count];
        Array.Fill(tiers, -1);
        var queue = new List<int>();
        foreach (var group in plan.Devices.Groups.Where(g => g.Model.Kind == DeviceKind.Host))
        {
            for (var device = group.First; device < group.First + group.Count; device++)
            {
                if (start[device] == start[device + 1]) continue;
                tiers[device] = 0;
                queue.Add(device);
            }
        }
        for (var at = 0; at < queue.Count; at++)
        {
            for (var i = start[queue[at]]; i < start[queue[at] + 1]; i++)
            {
                if (tiers[near[i]] >= 0) continue;
                tiers[near[i]] = tiers[queue[at]] + 1;
                queue.Add(near[i]);
            }
        }
        return tiers;
    }

    private static (int[] Start, int[] Near) Neighbours(Plan plan, bool[] contains)
    {
        var start = new int[plan.Devices.Count + 1];
        for (var link = 0; link < contains.Length; link++)
        {
            if (!contains[link]) continue;
            start[plan.Links.FromDevice(link) + 1]++;
            start[plan.Links.ToDevice(link) + 1]++;
        }
        for (var i = 0; i < plan.Devices.Count; i++) start[i + 1] += start[i];
        var near = new int[start[^1]];
        var next = start.AsSpan(0, plan.Devices.Count).ToArray();
        for (var link = 0; link < contains.Length; link++)
        {
            if (!contains[link]) continue;
            near[next[plan.Links.FromDevice(link)]++] = plan.Links.ToDevice(link);
            near[next[plan.Links.ToDevice(link)]++] = plan.Links.FromDevice(link);
        }
        return (start, near);
    }
}
