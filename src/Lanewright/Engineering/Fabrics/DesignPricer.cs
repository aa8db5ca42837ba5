using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Places a design year by year and prices it.</summary>
internal sealed class DesignPricer(FabricDemand demand, StateCounter counter)
{
    private readonly Dictionary<EdgeKey, LinkTally> edges = [];

    /// <summary>The design with its price, or null with what is in the way.</summary>
    public PricedDesign? Price(FabricDesign design, out string fault)
    {
        var wanted = demand.Wanted;
        if (StateIn(design, wanted.Years, out fault) is not { } end) return null;
        if (fault.Length == 0 && wanted.RackPower is { } limit && end.RackWatts > limit.Value && end.WorstSwitchWatts > 0)
        {
            // Modules may make a rack of upper switches too hot that was not without them: fewer to a rack then.
            var fewer = (int)Math.Floor(limit.Value / end.WorstSwitchWatts);
            if (fewer >= 1 && fewer < design.MostInRack)
            {
                design = design with { MostInRack = fewer };
                if (StateIn(design, wanted.Years, out fault) is not { } spread) return null;
                end = spread;
            }
        }
        if (end.Fault.Length == 0 && demand.Hall.Limits is { } limits)
        {
            if (Thinned(ref design, end, limits, out fault) is not { } kept) return null;
            end = kept;
        }
        if (end.Fault.Length > 0)
        {
            fault = end.Fault;
            return null;
        }
        var start = demand.IsSteady ? end : StateIn(design, 0, out fault);
        if (start is null) return null;
        if (!demand.IsSteady && demand.Hall.Limits?.FaultOf(start).Text is { Length: > 0 } early)
        {
            fault = early;
            return null;
        }
        return Over(design, start, end);
    }

    /// <summary>The design with so few switches to a rack that their modules keep the limits of racks as well; null with what is in the
    /// way where even one to a rack does not.</summary>
    private FabricState? Thinned(ref FabricDesign design, FabricState end, HallLimits limits, out string fault)
    {
        while (true)
        {
            (var rack, fault) = limits.FaultOf(end);
            if (fault.Length == 0) return end;
            var here = rack is null || demand.IndexAmongHosts(rack) >= 0
                ? 0
                : end.Fabric.Layout.Groups.Sum(g => g.Places.Count(p => p.Rack.Index == rack.Index));
            if (here <= 1) return null;
            design = design with { MostInRack = Math.Min(design.MostInRack, here) - 1 };
            if (design.MostInRack < 1 || StateIn(design, demand.Wanted.Years, out fault) is not { } thinner) return null;
            end = thinner;
            if (end.Fault.Length > 0) return end;
        }
    }

    private FabricState? StateIn(FabricDesign design, int year, out string fault) =>
        LayoutMaker.Place(demand, design, year, out fault) is { } placed
            ? counter.Of(placed, demand.Free, edges, design.OnlyKind >= 0)
            : null;

    private PricedDesign Over(FabricDesign design, FabricState start, FabricState end)
    {
        var years = ImmutableArray.CreateBuilder<FabricYear>();
        var wanted = demand.Wanted;
        var spent = Money.Zero;
        var energy = default(Energy);
        for (var year = 0; year <= wanted.Years; year++)
        {
            var state = year == 0 ? start : year == wanted.Years || demand.IsSteady ? end : StateIn(design, year, out _) ?? end;
            var total = state.Bill.Cost(Money.Zero).Total;
            var bought = total > spent ? total - spent : Money.Zero;
            spent = total > spent ? total : spent;
            var drawn = year < wanted.Years ? EnergyUse.OfYear(state.TypicalWatts, wanted) : default;
            energy += drawn;
            years.Add(new FabricYear(year, state.Fabric.Hosts.Sum(), LeavesOf(state), bought, drawn));
        }
        return new PricedDesign(design, start, end, start.Bill.Cost(Money.Zero), end.Bill.Cost(energy.At(wanted.EnergyPrice)),
            years.ToImmutable(), energy);
    }

    private static int LeavesOf(FabricState state) => state.Fabric.Layout.Groups
        .Where(g => g.Role is SwitchRole.Leaf or SwitchRole.Box)
        .Sum(g => g.Places.Length);
}
