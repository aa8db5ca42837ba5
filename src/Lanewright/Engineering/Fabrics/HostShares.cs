using System.Collections.Immutable;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>The same mix of hosts in another number.</summary>
internal static class HostShares
{
    /// <summary>Hosts of every kind in proportion, as many together as asked for; the largest remainders are rounded up, and a kind left
    /// with none is left out.</summary>
    public static ImmutableArray<HostDemand> Of(ImmutableArray<HostDemand> hosts, int together)
    {
        var all = hosts.Sum(h => (long)h.Count);
        var shares = hosts
            .Select((h, i) => (Index: i, Whole: h.Count * (long)together / all, Left: h.Count * (long)together % all))
            .ToList();
        var missing = together - shares.Sum(s => s.Whole);
        var raised = shares.OrderByDescending(s => s.Left).ThenBy(s => s.Index).Take((int)missing).Select(s => s.Index).ToHashSet();
        return
        [
            .. shares
                .Select(s => hosts[s.Index] with { Count = (int)(s.Whole + (raised.Contains(s.Index) ? 1 : 0)) })
                .Where(h => h.Count > 0),
        ];
    }
}
