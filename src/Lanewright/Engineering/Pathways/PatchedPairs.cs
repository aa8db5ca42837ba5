using System.Collections.Immutable;
using Lanewright.Model;

namespace Lanewright.Engineering.Pathways;

/// <summary>Links that are to go ways of their own and of which one goes through panels: their cords and trunks are laid each by itself, so
/// whole ways are held against one another when all is laid.</summary>
internal static class PatchedPairs
{
    /// <summary>The pairs of a plan, each once.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="net">The graph of pathways.</param>
    /// <param name="waysOf">The ways of all that a link goes through.</param>
    public static ImmutableArray<ApartPair> Of(Plan plan, WayNet net, Func<int, IEnumerable<CableWay>> waysOf)
    {
        var known = new Dictionary<int, CableWay[]>();
        var told = new HashSet<(int, int)>();
        var pairs = ImmutableArray.CreateBuilder<ApartPair>();
        foreach (var (device, one, other) in ApartPairing.Of(plan))
        {
            if (one == other || plan.Devices.RackIndex(device) is not (>= 0 and var rack)) continue;
            if (!IsPatched(one) && !IsPatched(other)) continue;
            if (Ways(one).Length == 0 || Ways(other).Length == 0 || !told.Add((Math.Min(one, other), Math.Max(one, other)))) continue;
            pairs.Add(ApartPair.Patched(net, (one, other), rack, Ways(one), Ways(other)));
        }
        return pairs.ToImmutable();

        bool IsPatched(int link) => !plan.Statements[plan.Links.Statement(link)].Through.IsEmpty;

        CableWay[] Ways(int link) => known.TryGetValue(link, out var ways) ? ways : known[link] = [.. waysOf(link)];
    }
}
