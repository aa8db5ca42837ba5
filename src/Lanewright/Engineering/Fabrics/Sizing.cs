using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model.Places;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Answers what fabric to buy. One instance remembers the prices of links, so that asking again with other wishes is
/// cheap.</summary>
public sealed class Sizing
{
    private readonly FinderContext context;
    private readonly LinkPricer pricer;
    private readonly StateCounter counter;
    private readonly SwitchSpace space;
    private readonly NextLanes lanes;

    private readonly SizingEffort effort;

    /// <summary>Asks about a catalogue under limits and a policy.</summary>
    /// <param name="context">Limits, catalogue and policy.</param>
    /// <param name="effort">How long to look; null for a whole answer.</param>
    public Sizing(FinderContext context, SizingEffort? effort = null)
    {
        this.context = context;
        this.effort = (effort ?? SizingEffort.Whole) with { Cancel = context.Cancel };
        pricer = new LinkPricer(context);
        counter = new StateCounter(context, pricer);
        space = new SwitchSpace(context);
        lanes = new NextLanes(context);
    }

    /// <summary>The options, best first.</summary>
    /// <param name="wanted">What is asked.</param>
    /// <param name="step">Told of each shape before it is searched; null when nobody waits.</param>
    public SizingAnswer Of(WantedFabric wanted, Action<FabricShape>? step = null)
    {
        var options = new List<FabricOption>();
        var lost = ImmutableArray.CreateBuilder<ShapeLost>();
        var demand = DemandOf(wanted, out var fault);
        var search = demand is null ? null : new ShapeSearch(SearchOf(demand));
        var bound = double.PositiveInfinity;
        var looked = 0L;
        foreach (var shape in Enum.GetValues<FabricShape>())
        {
            step?.Invoke(shape);
            var result = search is null ? ShapeResult.None(fault) : search.Of(shape);
            looked += result.Looked;
            if (!double.IsNaN(result.Bound)) bound = Math.Min(bound, result.Bound);
            if (demand is not null && result.Best is { } best)
                options.Add(new OptionMaker(demand, best).Option(Money.FromHundredths((decimal)Math.Floor(result.Bound)), lanes));
            else lost.Add(new ShapeLost(shape, result.Reason, null));
        }
        return new SizingAnswer(
            [.. options.OrderBy(o => o.PriceOverYears).ThenBy(o => o.Shape)],
            lost.ToImmutable(),
            double.IsInfinity(bound) ? null : Money.FromHundredths((decimal)Math.Floor(bound)))
        {
            Looked = looked,
        };
    }

    private SearchContext SearchOf(FabricDemand demand) =>
        new(demand, space, new CostFloor(demand, context, pricer), new DesignPricer(demand, counter),
            (int)context.Standards.Practice("pair", "peer-links").Value, effort);

    private FabricDemand? DemandOf(WantedFabric wanted, out string fault)
    {
        if (FabricHall.Of(wanted, context.Standards, out fault) is not { } hall) return null;
        var hosts = ImmutableArray.CreateBuilder<HostBuild>();
        var units = hall.HostRacks.IsEmpty ? RackType.Standard(context.Standards).Units : hall.HostRacks.Min(r => r.Type.Units);
        foreach (var demand in wanted.Hosts)
        {
            if (HostBuild.Of(demand, context, units, out fault) is not { } host) return null;
            hosts.Add(host);
        }
        return new FabricDemand(wanted, hosts.ToImmutable(), hall, new FreeItems(wanted.Reuse));
    }
}
