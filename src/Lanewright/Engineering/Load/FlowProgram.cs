using Google.OrTools.LinearSolver;

namespace Lanewright.Engineering.Load;

/// <summary>The linear program of the ideal split: a flow for each source over all directed links, the busiest link as empty as can be.
/// What symmetry proves alike shares a variable or a row, which loses nothing: the mean of a solution over all its images is as
/// good.</summary>
internal sealed class FlowProgram
{
    /// <summary>Pairs of source and directed link beyond which not even symmetry is looked at.</summary>
    private const long MostPairs = 4_000_000;

    private readonly FabricGraph graph;
    private readonly int[] sources;
    private readonly double[][] demand;
    private readonly FlowSides sides;
    private readonly Symmetry.Orbits orbits;
    private readonly PairOrbits flows;
    private readonly PairOrbits places;
    private readonly SortedDictionary<int, Variable> variables = [];

    private FlowProgram(FabricGraph graph, TrafficMatrix traffic, FlowDemand wanted)
    {
        this.graph = graph;
        (sources, demand) = (wanted.Sources, wanted.BySource);
        sides = new FlowSides(graph);
        orbits = SymmetryClasses.Of(graph, traffic).Orbits;
        flows = new PairOrbits(sources, graph.Links.Length * 2, orbits.Generators, g => g.Sides);
        places = new PairOrbits(sources, graph.Nodes.Length, orbits.Generators, g => g.Vertices);
    }

    /// <summary>What each directed link carries, in Gb/s: a link doubled, and one more from end B.</summary>
    public double[] SideGigabits { get; private set; } = [];

    /// <summary>A price for each directed link, from the program's dual.</summary>
    public double[] SidePrices { get; private set; } = [];

    /// <summary>Solves the program; null when it is too large, or the solver did not reach the optimum.</summary>
    /// <param name="graph">The fabric.</param>
    /// <param name="traffic">What it carries.</param>
    /// <param name="wanted">The same, laid out by source.</param>
    /// <param name="avoidsDetours">Whether, of all ways to keep the busiest link that empty, the one with the least traffic on all links
    /// is wanted; to nine places, and at twice the time.</param>
    public static FlowProgram? Solve(FabricGraph graph, TrafficMatrix traffic, FlowDemand wanted, bool avoidsDetours)
    {
        if ((long)wanted.Sources.Length * graph.Links.Length * 2 > MostPairs) return null;
        var program = new FlowProgram(graph, traffic, wanted);
        return program.CountVariables() <= IdealSplit.MostVariables && program.Run(avoidsDetours) ? program : null;
    }

    private int CountVariables()
    {
        var found = new HashSet<int>();
        for (var source = 0; source < sources.Length; source++)
            foreach (var side in sides.All)
                if (MayUse(source, side)) found.Add(flows.Of(source, side));
        return found.Count;
    }

    /// <summary>Hosts forward nothing: traffic leaves only its own source, and enters only bundles that it is for.</summary>
    private bool MayUse(int source, int side)
    {
        var (from, to) = (sides.From(side), sides.From(side ^ 1));
        return (!graph.Nodes[from].IsTerminal || from == sources[source]) && (!graph.Nodes[to].IsTerminal || demand[source][to] > 0);
    }

    private bool Run(bool avoidsDetours)
    {
        using var solver = Solver.CreateSolver("GLOP");
        var fullest = solver.MakeNumVar(0, double.PositiveInfinity, "");
        for (var source = 0; source < sources.Length; source++)
        {
            foreach (var side in sides.All)
            {
                var orbit = flows.Of(source, side);
                if (!MayUse(source, side) || variables.ContainsKey(orbit)) continue;
                variables[orbit] = solver.MakeNumVar(0, double.PositiveInfinity, "");
            }
        }
        AddConservation(solver);
        // Hosts deal their traffic out over their own links first so that none is overfull, or no more than it has to be.
        var fullestHost = solver.MakeNumVar(1, double.PositiveInfinity, "");
        var capacities = AddCapacities(solver, fullest, fullestHost);
        solver.Objective().SetMinimization();
        if (graph.HostLinkWidening > 1)
        {
            solver.Objective().SetCoefficient(fullestHost, 1);
            if (solver.Solve() != Solver.ResultStatus.OPTIMAL) return false;
            fullestHost.SetUb(fullestHost.SolutionValue() * (1 + Slack));
            solver.Objective().SetCoefficient(fullestHost, 0);
        }
        solver.Objective().SetCoefficient(fullest, 1);
        if (solver.Solve() != Solver.ResultStatus.OPTIMAL) return false;
        ReadPrices(capacities);
        ReadLoads();
        if (!avoidsDetours) return true;
        fullest.SetUb(fullest.SolutionValue() * (1 + Slack));
        solver.Objective().SetCoefficient(fullest, 0);
        foreach (var (_, variable) in variables) solver.Objective().SetCoefficient(variable, 1);
        if (solver.Solve() == Solver.ResultStatus.OPTIMAL) ReadLoads();
        return true;
    }

    /// <summary>What comes into a switch leaves it; what comes to a bundle is what is for it.</summary>
    private void AddConservation(Solver solver)
    {
        for (var source = 0; source < sources.Length; source++)
        {
            for (var node = 0; node < graph.Nodes.Length; node++)
            {
                if (places.Of(source, node) != (source * graph.Nodes.Length) + node || graph.IsDown(node)) continue;
                var isTerminal = graph.Nodes[node].IsTerminal;
                var arriving = isTerminal ? demand[source][node] : 0;
                if (isTerminal && arriving == 0) continue;
                var row = solver.MakeConstraint(arriving, arriving, "");
                var terms = new SortedDictionary<int, int>();
                foreach (var side in sides.Leaving(node))
                {
                    Count(terms, source, side ^ 1, 1);
                    if (!isTerminal) Count(terms, source, side, -1);
                }
                foreach (var (orbit, times) in terms) row.SetCoefficient(variables[orbit], times);
            }
        }
    }

    private void Count(SortedDictionary<int, int> terms, int source, int side, int sign)
    {
        if (!MayUse(source, side)) return;
        var orbit = flows.Of(source, side);
        terms[orbit] = terms.GetValueOrDefault(orbit) + sign;
    }

    private Dictionary<int, Constraint> AddCapacities(Solver solver, Variable fullest, Variable fullestHost)
    {
        var rows = new Dictionary<int, Constraint>();
        foreach (var side in sides.All)
        {
            if (orbits.OfSide(side) != side) continue;
            var row = solver.MakeConstraint(double.NegativeInfinity, 0, "");
            rows[side] = row;
            var isHosts = graph.HostLinkWidening > 1 && graph.BundleOf(side / 2) >= 0;
            if (isHosts) row.SetCoefficient(fullestHost, -graph.Links[side / 2].Gigabits / graph.HostLinkWidening);
            else row.SetCoefficient(fullest, -graph.Links[side / 2].Gigabits);
            var terms = new SortedDictionary<int, int>();
            for (var source = 0; source < sources.Length; source++) Count(terms, source, side, 1);
            foreach (var (orbit, times) in terms) row.SetCoefficient(variables[orbit], times);
        }
        return rows;
    }

    private void ReadPrices(Dictionary<int, Constraint> capacities)
    {
        var orbitSizes = sides.All.GroupBy(orbits.OfSide).ToDictionary(o => o.Key, o => o.Count());
        SidePrices = new double[graph.Links.Length * 2];
        foreach (var side in sides.All)
            SidePrices[side] = Math.Max(0, -capacities[orbits.OfSide(side)].DualValue()) / orbitSizes[orbits.OfSide(side)];
    }

    private void ReadLoads()
    {
        var values = variables.ToDictionary(v => v.Key, v => Math.Max(0, v.Value.SolutionValue()));
        SideGigabits = new double[graph.Links.Length * 2];
        for (var source = 0; source < sources.Length; source++)
            foreach (var side in sides.All)
                if (MayUse(source, side)) SideGigabits[side] += values[flows.Of(source, side)];
    }

    /// <summary>How much the second solution may give away, so that rounding does not make it impossible.</summary>
    private const double Slack = 1e-9;
}
