using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>The best design found so far, and what is proven about those not looked at. Designs are offered with a lower bound, cheapest
/// first; one is priced only while it can still win.</summary>
internal sealed class Incumbent(WantedFabric wanted, DesignPricer pricer)
{
    /// <summary>So many designs of one shape are priced at most; what is left then only counts for the bound.</summary>
    private const int MostPriced = 400;

    private double skipped = double.PositiveInfinity;
    private int priced;
    private (double Bound, string Reason) fault = (double.PositiveInfinity, "");

    /// <summary>The best so far.</summary>
    public PricedDesign? Best { get; private set; }

    /// <summary>Hundredths the best costs.</summary>
    public double Cost { get; private set; } = double.PositiveInfinity;

    /// <summary>Whether a design with a lower bound could still win.</summary>
    public bool CouldWin(double bound) => bound < Cost;

    /// <summary>Prices a design if it can still win, and keeps it if it wins.</summary>
    public void Offer(FabricDesign design, double bound)
    {
        if (!CouldWin(bound)) return;
        if (priced >= MostPriced)
        {
            skipped = Math.Min(skipped, bound);
            return;
        }
        priced++;
        var found = pricer.Price(design, out var reason);
        if (found is not null) reason = BrokenLimits.Of(found, wanted);
        if (found is null || reason.Length > 0)
        {
            Note(bound, reason);
            return;
        }
        var cost = (double)found.Total.Hundredths;
        if (cost >= Cost) return;
        Cost = cost;
        Best = found;
    }

    /// <summary>Remembers why a design that costs at least so much does not do; the cheapest speaks for the shape.</summary>
    public void Note(double bound, string reason)
    {
        if (bound < fault.Bound) fault = (bound, reason);
    }

    /// <summary>What the search came to.</summary>
    /// <param name="otherwise">What is in the way where no design was even offered.</param>
    public ShapeResult Result(string otherwise)
    {
        var bound = Math.Min(Cost, skipped);
        if (double.IsFinite(bound)) return new ShapeResult(Best, bound, Best is null ? "the search was broken off" : "");
        return ShapeResult.None(fault.Reason.Length > 0 ? fault.Reason : otherwise);
    }
}
