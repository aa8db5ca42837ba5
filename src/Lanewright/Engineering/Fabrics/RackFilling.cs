using System.Collections.Immutable;
using Lanewright.Model.Places;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Which of the racks named hosts fill, in their order: one that does not take as many hosts as are wanted in a rack is passed
/// over.</summary>
/// <param name="Racks">The racks that hosts fill, kind after kind.</param>
/// <param name="Left">The racks that none fills.</param>
/// <param name="Fault">What is in the way; empty otherwise.</param>
internal sealed record RackFilling(ImmutableArray<Rack> Racks, ImmutableArray<Rack> Left, string Fault)
{
    /// <summary>Fills the racks a question names.</summary>
    /// <param name="wanted">The question.</param>
    /// <param name="hosts">The kinds of host.</param>
    /// <param name="limits">What the racks take; null where nothing is said of that.</param>
    public static RackFilling Of(WantedFabric wanted, ImmutableArray<HostBuild> hosts, HallLimits? limits)
    {
        var (filled, left) = (ImmutableArray.CreateBuilder<Rack>(), ImmutableArray.CreateBuilder<Rack>());
        var (at, refusal) = (0, "");
        foreach (var host in hosts)
        {
            var rest = HostBuild.CountIn(host.Demand, wanted.Years, wanted.Growth);
            for (; rest > 0 && at < wanted.HostRacks.Length; at++)
            {
                var rack = wanted.HostRacks[at];
                var here = Math.Min(rest, host.Demand.PerRack);
                if (Refusal(host, rack, here, limits) is { Length: > 0 } why)
                {
                    if (refusal.Length == 0) refusal = why;
                    left.Add(rack);
                    continue;
                }
                filled.Add(rack);
                rest -= here;
            }
            if (rest > 0) return new RackFilling([], [], TooFew(wanted, filled.Count, refusal));
        }
        left.AddRange(wanted.HostRacks.Skip(at));
        return new RackFilling(filled.ToImmutable(), left.ToImmutable(), "");
    }

    private static string Refusal(HostBuild host, Rack rack, int here, HallLimits? limits)
    {
        if (limits is null) return "";
        var taken = limits.UnitsUp(rack, Math.Max(1, host.Model.Units)).Take(host.Demand.PerRack).Count();
        return taken < host.Demand.PerRack
            ? $"rack {rack.Name} has units left for {Numerals.Whole(taken)} x {host.Model.Name}"
            : limits.Fault(rack, [.. Enumerable.Repeat(host.Load, here)]);
    }

    private static string TooFew(WantedFabric wanted, int filled, string refusal)
    {
        var after = wanted.Growth.Value > 0 && wanted.Years > 0 ? $" after {Numerals.Whole(wanted.Years)} years of growth" : "";
        var fill = $"the hosts fill {FabricHall.RacksFor(wanted)} racks{after}";
        return refusal.Length == 0
            ? $"{fill} and {Numerals.Whole(wanted.HostRacks.Length)} are named for them"
            : $"{fill} and of the {Numerals.Whole(wanted.HostRacks.Length)} named for them {Numerals.Whole(filled)} take "
                + $"{string.Join(" or ", wanted.Hosts.Select(h => Numerals.Whole(h.PerRack)).Distinct())} each: {refusal}";
    }
}
