using Google.OrTools.Sat;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Chooses one leaf for each kind of host at the least total, within the ports of the upper switches and the rack units wished.
/// The cheapest of each kind are taken where they fit together; where they do not, a solver decides, with one worker and a fixed
/// seed.</summary>
internal sealed class LeafChooser(SearchContext context, SwitchBuild upper, int uppers)
{
    /// <summary>Deterministic seconds of the solver; what is not proven by then counts for the bound only.</summary>
    private const string Parameters = "num_workers:1,random_seed:1,max_deterministic_time:4";

    private readonly List<LeafRow[]> forbidden = [];

    /// <summary>Rules a choice out.</summary>
    public void Forbid(LeafRow[] chosen) => forbidden.Add(chosen);

    /// <summary>The choice, and what none goes below.</summary>
    /// <param name="rows">Leaves of each kind.</param>
    /// <param name="costs">Hundredths of each; infinite for one that is out.</param>
    public (LeafRow[]? Chosen, double Bound) Choose(List<LeafRow>[] rows, double[][] costs)
    {
        if (costs.Any(c => c.All(double.IsInfinity))) return (null, double.PositiveInfinity);
        var cheapest = rows.Select((r, kind) => r[Array.IndexOf(costs[kind], costs[kind].Min())]).ToArray();
        if (Fits(cheapest)) return (cheapest, costs.Sum(c => c.Min()));
        // The solver counts cages; which cages go together is told by taking them.
        while (true)
        {
            var (chosen, bound) = Solve(rows, costs);
            if (chosen is null || Fits(chosen)) return (chosen, bound);
            forbidden.Add(chosen);
        }
    }

    private bool Fits(LeafRow[] chosen)
    {
        if (forbidden.Any(f => f.SequenceEqual(chosen, ReferenceEqualityComparer.Instance))) return false;
        var taken = chosen.Select((r, kind) => UnitsOf(kind, r)).Sum();
        if (context.Wanted.RackUnits is { } units && taken > units - (uppers * upper.Units)) return false;
        var taking = new PortTaking(upper.Layout);
        return chosen.All(r => taking.Take(r.UpperPorts, r.UpperLinks).Length >= r.UpperCages);
    }

    private (LeafRow[]? Chosen, double Bound) Solve(List<LeafRow>[] rows, double[][] costs)
    {
        var model = new CpModel();
        var taken = rows.Select((r, kind) => r.Select((_, i) => model.NewBoolVar($"k{kind}r{i}")).ToArray()).ToArray();
        for (var kind = 0; kind < rows.Length; kind++)
        {
            model.AddExactlyOne(taken[kind]);
            for (var i = 0; i < rows[kind].Count; i++)
                if (double.IsInfinity(costs[kind][i])) model.Add(taken[kind][i] == 0);
        }
        foreach (var cage in upper.Cages)
            model.Add(Sum(taken, rows, (_, r) => ReferenceEquals(r.UpperPorts.Cage, cage) ? CagesLost(r) : 0)
                <= upper.Layout.Slots.Count(s => ReferenceEquals(s.Cage, cage)));
        if (context.Wanted.RackUnits is { } units) model.Add(Sum(taken, rows, UnitsOf) <= units - (uppers * upper.Units));
        foreach (var choice in forbidden)
        {
            var indexes = choice.Select((r, kind) => rows[kind].FindIndex(l => ReferenceEquals(l, r))).ToArray();
            if (indexes.All(i => i >= 0)) model.AddBoolOr(indexes.Select((i, kind) => taken[kind][i].Not()));
        }
        model.Minimize(LinearExpr.WeightedSum(
            taken.SelectMany(t => t), costs.SelectMany(c => c).Select(c => double.IsInfinity(c) ? 0 : (long)Math.Floor(c))));
        var solver = new CpSolver { StringParameters = Parameters };
        var status = solver.Solve(model);
        if (status is CpSolverStatus.Infeasible) return (null, double.PositiveInfinity);
        var chosen = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? taken.Select((t, kind) => rows[kind][Array.FindIndex(t, v => solver.BooleanValue(v))]).ToArray()
            : null;
        return (chosen, solver.BestObjectiveBound);
    }

    private static LinearExpr Sum(BoolVar[][] taken, List<LeafRow>[] rows, Func<int, LeafRow, long> weight) => LinearExpr.WeightedSum(
        taken.SelectMany(t => t), rows.SelectMany((r, kind) => r.Select(l => weight(kind, l))));

    private static long CagesLost(LeafRow row) =>
        row.UpperPorts.Cage.NeighbourLost.Contains(row.UpperPorts.Mode) ? (2L * row.UpperCages) - 1 : row.UpperCages;

    private long UnitsOf(int kind, LeafRow row) => (long)row.Blocks * context.Demand.Hosts[kind].Demand.Ports * row.Config.Build.Units;
}
