namespace Lanewright.Engineering.Placement;

/// <summary>Gives each of several things one of as many places, where each costs by its own place and each pair by the places of both.
/// Branches are cut by a bound that is an assignment of assignments; what is left when the work is used up is told by the bound.</summary>
/// <remarks>Source of the bound: P. C. Gilmore 1962 and E. L. Lawler 1963, each thing at each place with the others at their best by
/// themselves.</remarks>
public sealed class QuadraticAssignment
{
    /// <summary>Steps of the assignments within bounds that are made at most: about a second.</summary>
    private const long MostSteps = 100_000_000;

    private readonly double[,] alone;
    private readonly double[,,,] between;
    private readonly int count;

    /// <summary>Where the things stand that have been given a place, first ones first.</summary>
    private readonly int[] places;
    private readonly bool[] isTaken;

    private int[] found;
    private double best;
    private double unsearched = double.PositiveInfinity;
    private long steps;

    private QuadraticAssignment(double[,] alone, double[,,,] between, int[] start)
    {
        (this.alone, this.between, count) = (alone, between, start.Length);
        (places, isTaken) = (new int[count], new bool[count]);
        (found, best) = (start, Cost(alone, between, start));
    }

    /// <summary>The cheapest order found, and what none goes below.</summary>
    /// <param name="alone">Cost of a thing at a place.</param>
    /// <param name="between">Cost of two things by the place of each, in the order thing, place, other thing, other place; both orders of
    /// a pair are added.</param>
    /// <param name="start">A place for each thing, to begin from.</param>
    /// <returns>The place of each thing, its cost in all, and the bound: the cost itself where it is proven the least.</returns>
    public static (int[] Places, double Cost, double NoLessThan) Solve(double[,] alone, double[,,,] between, int[] start)
    {
        var search = new QuadraticAssignment(alone, between, start);
        search.Exchange();
        search.Go(0, search.Bound(0));
        return (search.found, search.best, Math.Min(search.best, search.unsearched));
    }

    /// <summary>What all cost, each at its place of the order.</summary>
    public static double Cost(double[,] alone, double[,,,] between, int[] order)
    {
        var sum = 0.0;
        for (var i = 0; i < order.Length; i++)
        {
            sum += alone[i, order[i]];
            for (var j = 0; j < order.Length; j++)
                if (j != i) sum += between[i, order[i], j, order[j]];
        }
        return sum;
    }

    /// <summary>Takes the best exchange of two again and again until none helps.</summary>
    private void Exchange()
    {
        while (Exchanges(found).MinBy(Total) is { } next && Total(next) < best - Rounding) (found, best) = (next, Total(next));
    }

    private double Total(int[] order) => Cost(alone, between, order);

    private static IEnumerable<int[]> Exchanges(int[] order)
    {
        for (var i = 0; i < order.Length; i++)
        {
            for (var j = i + 1; j < order.Length; j++)
            {
                int[] next = [.. order];
                (next[i], next[j]) = (next[j], next[i]);
                yield return next;
            }
        }
    }

    /// <summary>Tries every place for the next thing, the most promising first.</summary>
    private void Go(int placed, double bound)
    {
        if (bound >= best - Rounding) return;
        if (placed == count)
        {
            (found, best) = ([.. places], bound);
            return;
        }
        if (steps >= MostSteps)
        {
            unsearched = Math.Min(unsearched, bound);
            return;
        }
        foreach (var (place, next) in Branches(placed).OrderBy(b => b.Bound).ToList())
        {
            (places[placed], isTaken[place]) = (place, true);
            Go(placed + 1, next);
            isTaken[place] = false;
        }
    }

    private IEnumerable<(int Place, double Bound)> Branches(int placed)
    {
        for (var place = 0; place < count; place++)
        {
            if (isTaken[place]) continue;
            (places[placed], isTaken[place]) = (place, true);
            yield return (place, Bound(placed + 1));
            isTaken[place] = false;
        }
    }

    /// <summary>What nothing goes below when the first things stand where they do.</summary>
    private double Bound(int placed)
    {
        int[] free = [.. Enumerable.Range(0, count).Where(p => !isTaken[p])];
        var least = new double[free.Length, free.Length];
        for (var i = 0; i < free.Length; i++)
            for (var p = 0; p < free.Length; p++)
                least[i, p] = WithPlaced(placed, placed + i, free[p]) + WithOthers(placed, i, free, p);
        var sum = Sum(least);
        for (var i = 0; i < placed; i++) sum += WithPlaced(i, i, places[i]);
        return sum;
    }

    /// <summary>A thing at a place by itself and with the first things.</summary>
    private double WithPlaced(int placed, int thing, int place)
    {
        var sum = alone[thing, place];
        for (var j = 0; j < placed; j++) sum += between[thing, place, j, places[j]] + between[j, places[j], thing, place];
        return sum;
    }

    /// <summary>A thing at a place with those that are still free, as if it alone were of account. Both orders of a pair are met, one
    /// from each of the two, so only one is counted here.</summary>
    private double WithOthers(int placed, int thing, int[] free, int place)
    {
        var others = free.Length - 1;
        var costs = new double[others, others];
        for (var j = 0; j < others; j++)
            for (var q = 0; q < others; q++)
                costs[j, q] = between[placed + thing, free[place], placed + Beyond(j, thing), free[Beyond(q, place)]];
        steps += (long)others * others * others;
        return Sum(costs);
    }

    /// <summary>Numbers with one left out.</summary>
    private static int Beyond(int number, int leftOut) => number < leftOut ? number : number + 1;

    private static double Sum(double[,] costs) => Assignment.Solve(costs).Select((p, t) => costs[t, p]).Sum();

    /// <summary>Sums of prices that differ by less are the same.</summary>
    private const double Rounding = 1e-6;
}
