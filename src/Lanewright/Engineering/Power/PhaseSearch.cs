using System.Collections.Immutable;

namespace Lanewright.Engineering.Power;

/// <summary>Looks for the order of loads on three phases whose fullest phase carries least: load by load, where least is drawn first, and
/// back again while something better may be left. The three sections are alike, so states that differ by their order alone are met
/// once.</summary>
internal sealed class PhaseSearch
{
    private const int Phases = 3;

    /// <summary>States looked at: a rack of twenty devices of two kinds has fewer.</summary>
    private const int MostStates = 5000;

    private readonly ImmutableArray<double> loads;
    private readonly bool isBetween;
    private readonly double[] sums = new double[Phases];
    private readonly int[] sections;
    private readonly HashSet<(int Next, double Low, double Middle, double High)> seen = [];
    private readonly double floor;
    private double best = double.PositiveInfinity;
    private ImmutableArray<int> found = [];

    /// <summary>Makes ready.</summary>
    /// <param name="loads">Watts, the largest first.</param>
    /// <param name="isBetween">Whether sections lie between two phases.</param>
    public PhaseSearch(ImmutableArray<double> loads, bool isBetween)
    {
        (this.loads, this.isBetween) = (loads, isBetween);
        sections = new int[loads.Length];
        var share = loads.Sum() / Phases;
        floor = Fullest(share, share, share);
    }

    /// <summary>The order found.</summary>
    public PhaseDeal Find()
    {
        Go(0);
        return new PhaseDeal(found, seen.Count < MostStates + loads.Length || IsEven);
    }

    /// <summary>Nothing is better than three sections alike.</summary>
    private bool IsEven => best <= floor + (floor * Rounding);

    private void Go(int next)
    {
        var fullest = Fullest(sums[0], sums[1], sums[2]);
        if (fullest >= best - (best * Rounding)) return;
        if (next == loads.Length)
        {
            (best, found) = (fullest, [.. sections]);
            return;
        }
        double[] order = [.. sums.Order()];
        if (seen.Count >= MostStates + loads.Length || !seen.Add((next, order[0], order[1], order[2]))) return;
        foreach (var sum in order.Distinct())
        {
            var section = Array.IndexOf(sums, sum);
            sums[section] = sum + loads[next];
            sections[next] = section;
            Go(next + 1);
            sums[section] = sum;
            if (IsEven) return;
        }
    }

    /// <summary>A measure that grows with the current of the fullest phase. A phase where two sections meet carries the root of the sum of
    /// their squares and their product; the root can be left out.</summary>
    private double Fullest(double one, double two, double three) => isBetween
        ? Math.Max(Meeting(one, two), Math.Max(Meeting(two, three), Meeting(three, one)))
        : Math.Max(one, Math.Max(two, three));

    private static double Meeting(double one, double other) => (one * one) + (other * other) + (one * other);

    /// <summary>Sums that differ by less are the same.</summary>
    private const double Rounding = 1e-9;
}
