using Google.OrTools.Sat;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Chooses one leaf for each kind of host at the least total, within the ports of the upper switches, the rack units wished and
/// the heat that the hall carries away. Choices are tried in the order of their totals; where the first of them do not fit together, a
/// solver decides, with one worker and a fixed seed.</summary>
internal sealed class LeafChooser(SearchContext context, SwitchBuild upper, int uppers)
{
    /// <summary>Deterministic seconds of the solver; what is not proven by then counts for the bound only.</summary>
    private const string Parameters = "num_workers:1,random_seed:1,max_deterministic_time:4";

    /// <summary>Choices that are tried one by one in less time than the solver takes to begin.</summary>
    private const int MostInOrder = 2_000;

    private readonly SharedRoom upperRoom = SharedRoom.Of(upper, uppers);
    private readonly List<LeafRow[]> forbidden = [];

    /// <summary>Rules a choice out.</summary>
    public void Forbid(LeafRow[] chosen) => forbidden.Add(chosen);

    /// <summary>The choice, and what none goes below.</summary>
    /// <param name="rows">Leaves of each kind.</param>
    /// <param name="prices">What each takes; of infinite cost one that is out.</param>
    public (LeafRow[]? Chosen, double Bound) Choose(List<LeafRow>[] rows, PartPrice[][] prices)
    {
        if (InOrder(rows, prices, out var chosen, out var bound)) return (chosen, bound);
        // The solver counts cages; which cages go together is told by taking them.
        while (true)
        {
            (chosen, bound) = Solve(rows, prices);
            if (chosen is null || Fits(chosen, [.. chosen.Select((r, kind) => prices[kind][rows[kind].IndexOf(r)].Watts)]))
                return (chosen, bound);
            forbidden.Add(chosen);
        }
    }

    /// <summary>Tries choices from the cheapest on; false when so many did not fit that it is left to the solver.</summary>
    private bool InOrder(List<LeafRow>[] rows, PartPrice[][] prices, out LeafRow[]? chosen, out double bound)
    {
        (chosen, bound) = (null, double.PositiveInfinity);
        var order = prices
            .Select(p => Enumerable.Range(0, p.Length).Where(i => !double.IsInfinity(p[i].Cost)).OrderBy(i => p[i].Cost).ToArray())
            .ToArray();
        if (order.Any(o => o.Length == 0)) return true;
        var waiting = new PriorityQueue<int[], double>();
        double Total(int[] at) => at.Select((a, kind) => prices[kind][order[kind][a]].Cost).Sum();
        var first = new int[rows.Length];
        waiting.Enqueue(first, Total(first));
        for (var tried = 0; waiting.TryDequeue(out var at, out var total); tried++)
        {
            if (tried == MostInOrder) return false;
            var choice = at.Select((a, kind) => rows[kind][order[kind][a]]).ToArray();
            if (Fits(choice, [.. at.Select((a, kind) => prices[kind][order[kind][a]].Watts)]))
            {
                (chosen, bound) = (choice, total);
                return true;
            }
            // Each choice follows from one before it alone: the one with a step less in its last kind that is not at the cheapest.
            for (var kind = Array.FindLastIndex(at, a => a > 0) is var last and >= 0 ? last : 0; kind < at.Length; kind++)
            {
                if (at[kind] + 1 >= order[kind].Length) continue;
                var next = (int[])at.Clone();
                next[kind]++;
                waiting.Enqueue(next, Total(next));
            }
        }
        return true;
    }

    private bool Fits(LeafRow[] chosen, double[] watts)
    {
        if (forbidden.Any(f => f.SequenceEqual(chosen, ReferenceEqualityComparer.Instance))) return false;
        if (!context.Demand.HasRoom(upperRoom + new SharedRoom(chosen.Sum(r => r.Units), watts.Sum()))) return false;
        var taking = new PortTaking(upper.Layout);
        return chosen.All(r => taking.Take(r.UpperPorts, r.UpperLinks).Length >= r.UpperCages);
    }

    private (LeafRow[]? Chosen, double Bound) Solve(List<LeafRow>[] rows, PartPrice[][] prices)
    {
        var model = new CpModel();
        var taken = rows.Select((r, kind) => r.Select((_, i) => model.NewBoolVar($"k{kind}r{i}")).ToArray()).ToArray();
        for (var kind = 0; kind < rows.Length; kind++)
        {
            model.AddExactlyOne(taken[kind]);
            for (var i = 0; i < rows[kind].Count; i++)
                if (double.IsInfinity(prices[kind][i].Cost)) model.Add(taken[kind][i] == 0);
        }
        foreach (var cage in upper.Cages)
            model.Add(Sum(taken, (kind, i) => ReferenceEquals(rows[kind][i].UpperPorts.Cage, cage) ? CagesLost(rows[kind][i]) : 0)
                <= upper.Layout.Slots.Count(s => ReferenceEquals(s.Cage, cage)));
        if (context.Wanted.RackUnits is { } units) model.Add(Sum(taken, (kind, i) => rows[kind][i].Units) <= units - upperRoom.Units);
        if (!double.IsInfinity(context.Demand.WattsLeft))
            model.Add(Sum(taken, (kind, i) => Whole(prices[kind][i].Watts)) <= Whole(context.Demand.WattsLeft - upperRoom.Watts));
        foreach (var choice in forbidden)
        {
            var indexes = choice.Select((r, kind) => rows[kind].FindIndex(l => ReferenceEquals(l, r))).ToArray();
            if (indexes.All(i => i >= 0)) model.AddBoolOr(indexes.Select((i, kind) => taken[kind][i].Not()));
        }
        model.Minimize(Sum(taken, (kind, i) => Whole(prices[kind][i].Cost)));
        var solver = new CpSolver { StringParameters = Parameters };
        var status = solver.Solve(model);
        if (status is CpSolverStatus.Infeasible) return (null, double.PositiveInfinity);
        var chosen = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? taken.Select((t, kind) => rows[kind][Array.FindIndex(t, v => solver.BooleanValue(v))]).ToArray()
            : null;
        return (chosen, solver.BestObjectiveBound);
    }

    /// <summary>Rounded down, so that the solver rules nothing out that fits; 0 for what is out.</summary>
    private static long Whole(double value) => double.IsInfinity(value) ? 0 : (long)Math.Floor(value);

    private static LinearExpr Sum(BoolVar[][] taken, Func<int, int, long> weight) => LinearExpr.WeightedSum(
        taken.SelectMany(t => t), taken.SelectMany((t, kind) => Enumerable.Range(0, t.Length).Select(i => weight(kind, i))));

    private static long CagesLost(LeafRow row) =>
        row.UpperPorts.Cage.NeighbourLost.Contains(row.UpperPorts.Mode) ? (2L * row.UpperCages) - 1 : row.UpperCages;
}
