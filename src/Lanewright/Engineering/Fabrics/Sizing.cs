using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Power;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Places;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;
using Lanewright.Text;

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
    private readonly PhaseDealer dealer = new();

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
        var search = demand is null ? null : new ShapeSearch(SearchOf(demand, effort));
        var bound = double.PositiveInfinity;
        var looked = 0L;
        foreach (var shape in Enum.GetValues<FabricShape>())
        {
            step?.Invoke(shape);
            var result = search is null || demand is null ? ShapeResult.None(fault) : Found(search.Of(shape), shape, demand);
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

    /// <summary>Parts of searches for the cheapest option or a rival that were looked into so far: the same on every machine.</summary>
    internal long Looked { get; private set; }

    /// <summary>The cheapest option of all shapes.</summary>
    /// <param name="wanted">What is asked.</param>
    /// <param name="first">The shape to begin with, as it has won nearby; the others need only be searched below its price.</param>
    /// <param name="most">What it costs at most, as something that needs no less is had for that; null where nobody knows.</param>
    internal Winner Cheapest(WantedFabric wanted, FabricShape? first = null, Money? most = null)
    {
        if (DemandOf(wanted, out _) is not { } demand) return Winner.Of(new SizingAnswer([], [], null));
        var search = new ShapeSearch(SearchOf(demand, effort));
        var (cost, bound) = (most is { } known ? (double)known.Hundredths : double.PositiveInfinity, double.PositiveInfinity);
        PricedDesign? best = null;
        foreach (var shape in Enum.GetValues<FabricShape>().OrderBy(s => s == first ? 0 : 1))
        {
            // A hair above what is known, so that of two that cost the same the shape decides and not the order.
            var result = search.Of(shape, cost + 1);
            Looked += result.Looked;
            if (!double.IsNaN(result.Bound)) bound = Math.Min(bound, result.Bound);
            if (result.Best is not { } found) continue;
            var price = (double)found.Total.Hundredths;
            if (price > cost || (price == cost && best is not null && found.Design.Shape > best.Design.Shape)) continue;
            (best, cost) = (found, price);
        }
        // What stands elsewhere may cost a little more in the places of this question.
        if (best is null && most is not null) return Cheapest(wanted, first);
        Money? least = double.IsInfinity(bound) ? null : Money.FromHundredths((decimal)Math.Floor(bound));
        return Winner.Of(new SizingAnswer(
            best is null || least is null ? [] : [new OptionMaker(demand, best).Option(least.Value, lanes)], [], least));
    }

    /// <summary>Whether some option of another family may cost less than a limit; false only where that is proven.</summary>
    /// <param name="wanted">What is asked.</param>
    /// <param name="limit">The limit.</param>
    /// <param name="family">The family that is left out.</param>
    internal bool HasRival(WantedFabric wanted, Money limit, FabricFamily family)
    {
        if (DemandOf(wanted, out _) is not { } demand) return false;
        var search = new ShapeSearch(SearchOf(demand, effort with { StopsAtFirst = true }));
        var ceiling = (double)limit.Hundredths;
        // A search that was broken off leaves a bound below the limit.
        return Enum.GetValues<FabricShape>().OrderBy(s => s == family.Shape ? 0 : 1)
            .Select(s => search.Of(s, ceiling, family))
            .Any(r =>
            {
                Looked += r.Looked;
                return r.Best is not null || r.Bound < ceiling;
            });
    }

    /// <summary>Some design that keeps everything asked for; none where there is none.</summary>
    /// <param name="wanted">What is asked.</param>
    /// <param name="most">How long to look.</param>
    /// <param name="isProven">Whether none is proven to be one: no search was broken off.</param>
    public ImmutableArray<FabricNeeds> Any(WantedFabric wanted, SizingEffort most, out bool isProven)
    {
        isProven = true;
        if (DemandOf(wanted, out _) is not { } demand) return [];
        var search = new ShapeSearch(SearchOf(demand, most with { Cancel = context.Cancel }));
        foreach (var shape in Enum.GetValues<FabricShape>())
        {
            var result = search.Of(shape);
            if (result.Best is { } best) return [new OptionMaker(demand, best).Needs(wanted)];
            if (double.IsFinite(result.Bound)) isProven = false;
        }
        return [];
    }

    /// <summary>What rules out each shape where nothing can be had; null as soon as one shape has a design, or a search of one was broken
    /// off and proves nothing.</summary>
    public ImmutableArray<ShapeLost>? RuledOut(WantedFabric wanted)
    {
        var lost = ImmutableArray.CreateBuilder<ShapeLost>();
        var demand = DemandOf(wanted, out var fault);
        var search = demand is null ? null : new ShapeSearch(SearchOf(demand, effort));
        foreach (var shape in Enum.GetValues<FabricShape>())
        {
            var result = search is null ? ShapeResult.None(fault) : search.Of(shape);
            if (result.Best is not null || double.IsFinite(result.Bound)) return null;
            lost.Add(new ShapeLost(shape, result.Reason, null));
        }
        return lost.ToImmutable();
    }

    /// <summary>Rates that ports of hosts of the catalogue have, lowest first.</summary>
    internal ImmutableArray<BitRate> HostRates =>
    [
        .. context.Catalogue.Cards.SelectMany(c => c.Banks)
            .Concat(context.Catalogue.Devices.Where(d => d.Kind == DeviceKind.Host).SelectMany(d => d.Banks))
            .SelectMany(b => b.Cage.Modes).Where(m => m.Ways == 1).Select(m => m.Rate).Distinct().Order(),
    ];

    /// <summary>What cages of its switches can be.</summary>
    internal SwitchOffer Offer => new(
        [.. space.All.SelectMany(b => b.Cages).Select(c => c.FormFactor.Name).Distinct().Order(NaturalOrder.Instance)],
        [.. space.All.SelectMany(b => b.Cages).SelectMany(c => c.Modes).Select(m => m.Rate).Distinct().Order()]);

    /// <summary>The result for a shape; where its search was broken off before it found anything, with the first design of a search that
    /// takes any, so that the answer has what conflicts and relaxations count on.</summary>
    private ShapeResult Found(ShapeResult result, FabricShape shape, FabricDemand demand)
    {
        if (result.Best is not null || !double.IsFinite(result.Bound)) return result;
        foreach (var most in new[] { SizingEffort.First, SizingEffort.Again })
        {
            var first = new ShapeSearch(SearchOf(demand, most with { Cancel = context.Cancel })).Of(shape);
            result = result with { Looked = result.Looked + first.Looked };
            if (first.Best is not null) return first with { Bound = result.Bound, Looked = result.Looked };
            if (!double.IsFinite(first.Bound)) return first with { Looked = result.Looked };
        }
        return result;
    }

    private SearchContext SearchOf(FabricDemand demand, SizingEffort effort)
    {
        var floor = new CostFloor(demand, context, pricer);
        return new SearchContext(demand, space, floor, new DesignPricer(demand, counter),
            (int)context.Standards.Practice("pair", "peer-links").Value, effort, new SwitchDraw(demand, pricer, floor));
    }

    private FabricDemand? DemandOf(WantedFabric wanted, out string fault)
    {
        fault = "";
        var hosts = ImmutableArray.CreateBuilder<HostBuild>();
        var racks = wanted.HostRacks.Take(Math.Max(1, FabricHall.RacksFor(wanted))).ToList();
        var units = racks.Count == 0 ? RackType.Standard(context.Standards).Units : racks.Min(r => r.Type.Units);
        foreach (var demand in wanted.Hosts)
        {
            if (HostBuild.Of(demand, context, units, out fault) is not { } host) return null;
            hosts.Add(host);
        }
        if (FabricHall.Of(wanted, hosts.ToImmutable(), context, dealer, out fault) is not { } hall) return null;
        var all = new FabricDemand(wanted, hosts.ToImmutable(), hall, new FreeItems(wanted.Reuse));
        // Without any switch: what hosts alone give off.
        fault = all.RoomFault(default);
        return fault.Length == 0 ? all : null;
    }
}
