namespace Lanewright.Engineering.Fabrics;

/// <summary>How many pods and cores leaves need.</summary>
/// <param name="survive">Switches of a tier that may be out.</param>
internal sealed class PodCounts(int survive)
{
    /// <summary>The fewest pods whose aggregation switches need no more than so many cores and have uplinks for all of them; 0 when no pod
    /// is so small.</summary>
    public int PodsUnder(PodRow row, int parallel, int perGroup) => Pods(row, blocks =>
        CoresBelow(row, blocks, parallel) <= perGroup && row.Below.UplinksBeside(blocks * row.PortsPerBlock) >= perGroup * parallel);

    /// <summary>The fewest pods: each as large as the ratio and the ports of its aggregation switches allow; 0 when none is.</summary>
    public int PodsOf(PodRow row, int parallel) => Pods(row, blocks =>
        row.Below.UplinksBeside(blocks * row.PortsPerBlock) >= CoresBelow(row, blocks, parallel) * parallel);

    /// <summary>Numbers of pods from the fewest on, each of which makes the largest pod smaller.</summary>
    public static IEnumerable<int> PodsFrom(PodRow row, int fewest)
    {
        var last = 0;
        for (var blocks = row.BlocksPerPod(fewest); blocks >= 1; blocks--)
        {
            var pods = (row.Blocks + blocks - 1) / blocks;
            if (pods != last) yield return pods;
            last = pods;
        }
    }

    /// <summary>Cores that each aggregation switch is linked to when there are so many pods.</summary>
    public int Cores(PodRow row, int pods, int parallel) => (int)CoresBelow(row, row.BlocksPerPod(pods), parallel);

    /// <summary>Cores that each aggregation switch is linked to for so many blocks below, those that may be out included.</summary>
    public long CoresBelow(PodRow row, int blocks, int parallel) =>
        survive + row.Below.Step.Steps((long)blocks * row.PortsPerBlock, parallel);

    /// <summary>The fewest pods of blocks that are as many as may be in one; 0 when not even one may.</summary>
    private static int Pods(PodRow row, Func<int, bool> mayBe)
    {
        var (low, high) = (0, Math.Min(row.Blocks, row.Below.MostHosts / row.PortsPerBlock));
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (mayBe(middle)) low = middle;
            else high = middle - 1;
        }
        return low == 0 ? 0 : (row.Blocks + low - 1) / low;
    }
}
