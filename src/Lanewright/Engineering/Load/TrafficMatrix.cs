using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>Demands between bundles of hosts. Structured demands are kept as what they are made of, so that all-to-all of thousands of
/// bundles takes no square of memory.</summary>
public sealed class TrafficMatrix
{
    private readonly ImmutableArray<SpreadDemand> spreads;

    /// <summary>Demand named one by one, by receiver and then by sender.</summary>
    private readonly SortedDictionary<int, SortedDictionary<int, double>> flows;

    private TrafficMatrix(ImmutableArray<SpreadDemand> spreads, SortedDictionary<int, SortedDictionary<int, double>> flows)
    {
        this.spreads = spreads;
        this.flows = flows;
    }

    /// <summary>All demand, in Gb/s.</summary>
    public double TotalGigabits => spreads.Sum(s => s.TotalGigabits) + flows.Values.Sum(column => column.Values.Sum());

    /// <summary>The structured parts.</summary>
    internal ImmutableArray<SpreadDemand> Spreads => spreads;

    /// <summary>Demand named one by one, in Gb/s, ordered by receiver and sender.</summary>
    internal IEnumerable<(int From, int To, double Gigabits)> NamedFlows =>
        flows.SelectMany(column => column.Value.Select(entry => (entry.Key, column.Key, entry.Value)));

    /// <summary>Nodes that send or receive, rising.</summary>
    internal IEnumerable<int> Ends => spreads.SelectMany(s => s.Senders.Concat(s.Receivers))
        .Concat(flows.Keys)
        .Concat(flows.Values.SelectMany(column => column.Keys))
        .Distinct()
        .Order();

    /// <summary>Demand named one by one. Flows between the same two bundles add up.</summary>
    public static TrafficMatrix Of(IEnumerable<Flow> flows)
    {
        var columns = new SortedDictionary<int, SortedDictionary<int, double>>();
        foreach (var flow in flows) Add(columns, flow.From, flow.To, flow.Rate.Gigabits);
        return new TrafficMatrix([], columns);
    }

    /// <summary>Every host sends its rate, spread evenly over all other hosts named, those of its own bundle included.</summary>
    public static TrafficMatrix AllToAll(ImmutableArray<Terminal> terminals) => Spread(terminals, terminals);

    /// <summary>Every sender sends its rate, spread evenly over all receivers but itself: members of a bundle on both sides are the same
    /// hosts. Rates of receivers do not matter.</summary>
    public static TrafficMatrix Spread(ImmutableArray<Terminal> from, ImmutableArray<Terminal> to) => new([new SpreadDemand(from, to)], []);

    /// <summary>A permutation: hosts are numbered bundle by bundle, and each sends to the one so many places on, round and round, at the
    /// lower of the two rates. A host that would send to itself stays silent.</summary>
    public static TrafficMatrix Shift(ImmutableArray<Terminal> terminals, int places)
    {
        var columns = new SortedDictionary<int, SortedDictionary<int, double>>();
        var starts = new long[terminals.Length + 1];
        for (var i = 0; i < terminals.Length; i++) starts[i + 1] = starts[i] + terminals[i].Members;
        var all = starts[^1];
        var by = all == 0 ? 0 : ((places % all) + all) % all;
        if (by == 0) return new TrafficMatrix([], columns);
        for (var i = 0; i < terminals.Length; i++)
        {
            for (var host = starts[i]; host < starts[i + 1];)
            {
                var partner = (host + by) % all;
                var found = Array.BinarySearch(starts, partner);
                var to = found >= 0 ? found : ~found - 1;
                while (terminals[to].Members == 0) to++;
                var run = Math.Min(starts[i + 1] - host, starts[to + 1] - partner);
                var rate = Math.Min(terminals[i].Rate.Gigabits, terminals[to].Rate.Gigabits);
                Add(columns, terminals[i].Node, terminals[to].Node, rate * run);
                host += run;
            }
        }
        return new TrafficMatrix([], columns);
    }

    /// <summary>Every sender sends its rate to one bundle, which does not send to itself.</summary>
    public static TrafficMatrix Incast(ImmutableArray<Terminal> senders, int receiver) =>
        Of(senders.Where(s => s.Node != receiver).Select(s => new Flow(s.Node, receiver, s.Rate * s.Members)));

    /// <summary>Both demands at once.</summary>
    public static TrafficMatrix operator +(TrafficMatrix left, TrafficMatrix right)
    {
        var columns = new SortedDictionary<int, SortedDictionary<int, double>>();
        foreach (var (from, to, gigabits) in left.NamedFlows.Concat(right.NamedFlows)) Add(columns, from, to, gigabits);
        return new TrafficMatrix([.. left.spreads, .. right.spreads], columns);
    }

    /// <summary>Adds what each node sends to one node, in Gb/s, to a vector over the nodes of the whole fabric.</summary>
    public void AddColumn(int to, Span<double> gigabitsByNode)
    {
        foreach (var spread in spreads) spread.AddColumn(to, gigabitsByNode);
        if (!flows.TryGetValue(to, out var column)) return;
        foreach (var (from, gigabits) in column) gigabitsByNode[from] += gigabits;
    }

    /// <summary>What a node sends in all, in Gb/s.</summary>
    internal double GigabitsFrom(int node) =>
        spreads.Sum(s => s.GigabitsFrom(node)) + flows.Values.Sum(column => column.GetValueOrDefault(node));

    /// <summary>Whether anything is sent to a node.</summary>
    internal bool Reaches(int node) => flows.ContainsKey(node) || spreads.Any(s => s.ReceivingMembers(node) > 0);

    private static void Add(SortedDictionary<int, SortedDictionary<int, double>> columns, int from, int to, double gigabits)
    {
        if (!columns.TryGetValue(to, out var column)) columns[to] = column = [];
        column[from] = column.GetValueOrDefault(from) + gigabits;
    }
}
