using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>The best design found so far, and what is proven about those not looked at. Designs are offered with a lower bound, cheapest
/// first; one is priced only while it can still win.</summary>
/// <param name="demand">What is wanted.</param>
/// <param name="pricer">Exact prices.</param>
/// <param name="effort">How long to look.</param>
/// <param name="draw">What single switches draw.</param>
/// <param name="ceiling">Hundredths from which on nothing is of interest.</param>
/// <param name="barred">A family that is left out; null for none.</param>
internal sealed class Incumbent(FabricDemand demand, DesignPricer pricer, SizingEffort effort, SwitchDraw draw,
    double ceiling = double.PositiveInfinity, FabricFamily? barred = null)
{
    /// <summary>How deep to search, in times what the ports alone cost; at last without a limit, since switches may be far apart in
    /// price.</summary>
    private static readonly ImmutableArray<double> Depths = [1.25, 1.5, 2, 4, 8, double.PositiveInfinity];

    /// <summary>So many links take about as long to price as one part of the search to look into.</summary>
    private const long LinksAsOne = 10;

    private readonly UpperRacks racks = new(demand, draw);
    private readonly double budget = demand.Wanted.Budget is { } most ? (double)most.Hundredths + 1 : double.PositiveInfinity;
    private double depth = double.PositiveInfinity;
    private double refused;
    private long allowed = effort.MostLooked;
    private double skipped = double.PositiveInfinity;
    private long looked;
    private long pricing;
    private int priced;
    private readonly List<(FabricDesign Design, double Bound, int InRack)> placed = [];
    private int spread;
    private long pricingParts;
    private SharedRoom? tooMuch;
    private (double Watts, string Reason) least = (double.PositiveInfinity, "");
    private (double Bound, string Reason) fault = (double.PositiveInfinity, "");

    /// <summary>The best so far.</summary>
    public PricedDesign? Best { get; private set; }

    /// <summary>Hundredths the best costs.</summary>
    public double Cost { get; private set; } = double.PositiveInfinity;

    /// <summary>Hundredths from which on designs are not looked at: the best so far, how deep the search goes just now, or what is more
    /// than the budget.</summary>
    public double Limit => Math.Min(Math.Min(Cost, depth), Math.Min(budget, ceiling));

    /// <summary>Whether a design with a lower bound could still win.</summary>
    public bool CouldWin(double bound)
    {
        if (!(bound < Limit) || (effort.StopsAtFirst && Best is not null)) return false;
        effort.Cancel.ThrowIfCancellationRequested();
        if (++looked <= allowed) return true;
        Skip(bound);
        return false;
    }

    /// <summary>Counts a part of the search that was looked into on the way to a bound.</summary>
    public void Look() => looked++;

    /// <summary>Searches what costs little more than a floor first, and deeper only while nothing is found: without a best one, almost
    /// everything could win.</summary>
    public void Deepen(double floor, Action search)
    {
        if (Best is not null || effort.StopsAtFirst || double.IsFinite(ceiling))
        {
            search();
            return;
        }
        for (var i = 0; i < Depths.Length && Best is null; i++)
        {
            // What was offered less deep was not taken and is not looked at again; of several kinds of host not all of it was offered.
            if (demand.Hosts.Length == 1 && double.IsInfinity(skipped) && !double.IsInfinity(depth)) refused = depth;
            depth = Math.Max(1, floor) * Depths[i];
            // Where even the cheapest takes long to look through, something has to be left for what is dearer and can be had.
            allowed = effort.MostLooked * (i + 1) / (Depths.Length + 1);
            search();
        }
        allowed = effort.MostLooked;
        refused = 0;
        // What was found may cost more than the depth it was found at, and everything below its cost has to be looked at.
        var isOpen = Best is not null && Cost > depth;
        depth = double.PositiveInfinity;
        if (isOpen) search();
    }

    /// <summary>Prices a design if it can still win, and keeps it if it wins.</summary>
    public void Offer(FabricDesign design, double bound)
    {
        if (bound < refused || !CouldWin(bound) || barred?.Holds(design) == true) return;
        if (BrokenLimits.BeforePricing(design, demand) is { Length: > 0 } early)
        {
            Note(bound, early);
            return;
        }
        // One switch too hot for a rack by itself is too hot wherever it stands: such designs are not priced, so that they do not use up
        // what may be priced.
        if (draw.FaultOf(design) is var (watts, tooHot))
        {
            NoteDraw(bound, watts, tooHot);
            return;
        }
        if (racks.FaultOf(design) is { Length: > 0 } few)
        {
            Note(bound, few);
            return;
        }
        if ((priced >= effort.MostPriced && pricing >= effort.MostPricing) || pricing >= effort.MostPricingEver)
        {
            Skip(bound);
            return;
        }
        priced++;
        pricing += Work;
        var found = pricer.Price(design, out var reason);
        if (found is not null) reason = BrokenLimits.Of(found, demand.Wanted);
        if (found is not null && reason.Length > 0 && reason == BrokenLimits.Draw(found, demand.Wanted))
            NoteDraw(bound, found.End.RackWatts, reason);
        else if (found is null || reason.Length > 0) Note(bound, reason);
        else Keep(found);
        if (design.Upper is not null && found is not null) placed.Add((design, bound, found.MostUppersInRack));
    }

    private void Keep(PricedDesign found)
    {
        var cost = (double)found.Total.Hundredths;
        if (cost >= Math.Min(Cost, ceiling)) return;
        Cost = cost;
        Best = found;
    }

    /// <summary>Upper switches stand as close as they may; spread over more racks their cables may be cheaper, and a wish that forces them
    /// apart must not be cheaper than none. So every design that could still win is placed in all ways to spread it.</summary>
    private void Spread()
    {
        foreach (var (design, bound, inRack) in placed.OrderBy(p => p.Bound).ToList())
        {
            if (!(bound < Math.Min(Cost, Math.Min(budget, ceiling))) || (effort.StopsAtFirst && Best is not null)) break;
            if (spread++ >= effort.MostSpread && pricing >= effort.MostPricing)
            {
                Skip(bound);
                break;
            }
            foreach (var fewer in Spreads(design, inRack))
            {
                pricing += Work;
                var found = pricer.Price(design with { MostInRack = fewer }, out _);
                if (found is not null && BrokenLimits.Of(found, demand.Wanted).Length == 0) Keep(found);
            }
        }
        placed.Clear();
    }

    /// <summary>The numbers of upper switches in a rack below the one there is, each of which takes more racks.</summary>
    private static IEnumerable<int> Spreads(FabricDesign design, int inRack)
    {
        var sets = new[] { design.Upper?.Count ?? 0, design.Core is { } core ? core.Count * (design.Upper?.Count ?? 0) : 0 };
        return Enumerable.Range(1, Math.Max(0, Math.Min(inRack, sets.Max()) - 1))
            .GroupBy(most => sets.Select(s => (s + most - 1) / most).Aggregate(0L, (all, racks) => (all * int.MaxValue) + racks))
            .Select(g => g.Max())
            .OrderDescending();
    }

    /// <summary>What pricing one design counts beside parts of the search that are looked into: every link to a host, every year.</summary>
    private long Work { get; } = demand.IsSteady
        ? PortsOf(demand) / LinksAsOne
        : PortsOf(demand) * (demand.Wanted.Years + 1) / LinksAsOne;

    private static long PortsOf(FabricDemand demand) => demand.Hosts.Select((h, k) => (long)demand.Finals[k] * h.Demand.Ports).Sum();

    /// <summary>Lets designs that cost at least so much count for the bound without pricing them.</summary>
    public void Skip(double bound) => skipped = Math.Min(skipped, bound);

    /// <summary>Remembers why a design that costs at least so much does not do; the cheapest speaks for the shape.</summary>
    public void Note(double bound, string reason)
    {
        if (bound < fault.Bound) fault = (bound, reason);
    }

    /// <summary>Remembers a draw that is too much for a rack; where such a design speaks for the shape, the smallest is told.</summary>
    public void NoteDraw(double bound, double watts, string reason)
    {
        if (watts < least.Watts) least = (watts, reason);
        // An empty reason stands for the smallest draw, which may yet be seen.
        Note(bound, "");
    }

    /// <summary>Remembers the least room that was too much; told where nothing dearer speaks for the shape.</summary>
    public void NoteRoom(SharedRoom taken)
    {
        if (tooMuch is not { } before || (taken.Units, taken.Watts).CompareTo((before.Units, before.Watts)) < 0) tooMuch = taken;
    }

    /// <summary>Whether parts of so many designs may be priced in their places; what is left then only counts for the bound.</summary>
    public bool MayPriceParts(long parts)
    {
        if (pricingParts >= effort.MostPricingParts) return false;
        pricingParts += parts * Work;
        return true;
    }

    /// <summary>What the search came to.</summary>
    /// <param name="otherwise">What is in the way where no design was even offered.</param>
    public ShapeResult Result(string otherwise)
    {
        // Spread out, a design may keep a budget that it breaks as close as it may stand.
        if (!effort.StopsAtFirst || (Best is null && double.IsFinite(budget))) Spread();
        return Outcome(otherwise) with { Looked = looked + pricing };
    }

    private ShapeResult Outcome(string otherwise)
    {
        var bound = Math.Min(Cost, skipped);
        if (double.IsFinite(bound)) return new ShapeResult(Best, bound, Best is null ? BrokenOff(bound) : "");
        if (Told.Length > 0) return ShapeResult.None(Told);
        if (tooMuch is { } room) return ShapeResult.None(demand.RoomFault(room));
        return ShapeResult.None(
            double.IsFinite(budget) ? $"nothing of it costs as little as the budget of {demand.Wanted.Budget}" : otherwise);
    }

    /// <summary>The reason of the cheapest, or the smallest draw where it draws too much.</summary>
    private string Told => fault.Reason.Length > 0 ? fault.Reason : least.Reason;

    private string BrokenOff(double bound) =>
        "none was found before the search was broken off; "
        + (Told.Length > 0 ? $"of the cheapest one tried, {Told}; " : "")
        + $"it would cost no less than {Money.FromHundredths((decimal)Math.Floor(bound))}";
}
