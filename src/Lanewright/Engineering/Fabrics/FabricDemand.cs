using System.Collections.Immutable;
using Lanewright.Model.Places;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What is wanted, with hosts that have a model and a hall they stand in.</summary>
/// <param name="Wanted">What is wanted.</param>
/// <param name="Hosts">The kinds of host.</param>
/// <param name="Hall">The hall.</param>
/// <param name="Free">What exists already.</param>
internal sealed record FabricDemand(WantedFabric Wanted, ImmutableArray<HostBuild> Hosts, FabricHall Hall, FreeItems Free)
{
    private readonly ImmutableArray<ImmutableArray<int>> counts =
    [
        .. Enumerable.Range(0, Wanted.Years + 1).Select(year =>
            Hosts.Select(h => HostBuild.CountIn(h.Demand, year, Wanted.Growth)).ToImmutableArray()),
    ];

    private readonly Dictionary<(int Kind, int Year), FabricGroup> groups = [];

    private readonly Dictionary<int, int> hostRacks =
        Hall.HostRacks.Select((r, i) => (r.Index, At: i)).ToDictionary(r => r.Index, r => r.At);

    private readonly Dictionary<(int Rack, SwitchBuild Build, int Most), int> intoEmpty = [];

    /// <summary>Switches of a kind that a rack takes that holds none yet, counted once.</summary>
    /// <param name="question">The rack, the switch, and how many one rack may hold.</param>
    /// <param name="count">Counts them.</param>
    public int IntoEmpty((int Rack, SwitchBuild Build, int Most) question, Func<int> count) =>
        intoEmpty.TryGetValue(question, out var known) ? known : intoEmpty[question] = count();

    /// <summary>Which of the racks of hosts a rack is; -1 for none of them.</summary>
    public int IndexAmongHosts(Rack rack) => hostRacks.GetValueOrDefault(rack.Index, -1);

    /// <summary>Hosts of a kind in one of the racks of hosts after the last year.</summary>
    public int HostsIn(int kind, int rack)
    {
        var perRack = Hosts[kind].Demand.PerRack;
        return Math.Clamp(Finals[kind] - ((rack - Hall.FirstRack[kind]) * perRack), 0, perRack);
    }

    /// <summary>The kind of host that stands in a rack of hosts.</summary>
    public int KindIn(int rack) => Enumerable.Range(0, Hosts.Length).Last(k => Hall.FirstRack[k] <= rack);

    /// <summary>Hosts of each kind after the last year.</summary>
    public ImmutableArray<int> Finals => counts[^1];

    /// <summary>Whether the hosts stay as many as they are.</summary>
    public bool IsSteady => counts[0].SequenceEqual(counts[^1]);

    /// <summary>Watts that switches and modules may give off in the hall beside its hosts and what stands there; infinite where nothing is
    /// said of cooling.</summary>
    public double WattsLeft { get; } = Hall.Limits?.WattsLeft(
        Hall.HostRacks[0].Hall, Hosts.Sum(h => HostBuild.CountIn(h.Demand, Wanted.Years, Wanted.Growth) * h.Load.Watts))
        ?? double.PositiveInfinity;

    /// <summary>Whether switches that take so much keep what all share.</summary>
    public bool HasRoom(SharedRoom taken) => taken.Watts <= WattsLeft && (Wanted.RackUnits is not { } most || taken.Units <= most);

    /// <summary>What switches that take so much at the least have against them; empty when nothing.</summary>
    public string RoomFault(SharedRoom taken)
    {
        if (HasRoom(taken)) return "";
        if (Wanted.RackUnits is { } most && taken.Units > most)
            return $"its switches take {Numerals.Whole(taken.Units)} rack units or more and {Numerals.Whole(most)} are allowed";
        return taken.Watts > WattsLeft && Hall is { Limits: not null, HostRacks: [var first, ..] }
            ? HallLimits.HeatFault(first.Hall, taken.Watts - WattsLeft, " or more")
            : "";
    }

    /// <summary>Hosts of each kind at the beginning of a year.</summary>
    public ImmutableArray<int> CountsIn(int year) => counts[year];

    /// <summary>Whether leaves of a model find no room above hosts of a kind, not even where they stand in two racks in turn: then they
    /// stand in racks of their own.</summary>
    private bool StandsApart(int kind, SwitchBuild build)
    {
        var host = Hosts[kind];
        var left = Hall.HostRacks[Hall.FirstRack[kind]].Type.Units - (host.Demand.PerRack * host.Model.Units);
        return (host.Demand.Ports + 1) / 2 * build.Units > left;
    }

    /// <summary>The ways leaves of a model may stand: above their hosts, apart from them, or, where racks have limits that tell only
    /// once everything in them is known, both.</summary>
    public IEnumerable<bool> WaysToStand(int kind, SwitchBuild build) =>
        StandsApart(kind, build) ? [true] : Hall.Limits is null ? [false] : [false, true];

    /// <summary>Index of the rack that the leaf of one port of the hosts of a block stands in: that of the middle host it serves. Where a
    /// block fills several racks, its leaves stand in two of them, so that no rack takes all links of a host in another.</summary>
    public int RackOfLeaf(int kind, int block, int hostsPerLeaf, int port)
    {
        var (start, perRack) = ((long)block * hostsPerLeaf, Hosts[kind].Demand.PerRack);
        var last = (int)(Math.Min(start + hostsPerLeaf, Finals[kind]) - 1) / perRack;
        var middle = (int)(Math.Min(start + (hostsPerLeaf / 2), Finals[kind] - 1) / perRack);
        if (port % 2 != 0 && start / perRack < last) middle += middle < last ? 1 : -1;
        return Hall.FirstRack[kind] + middle;
    }

    /// <summary>The hosts of a kind where they stand in a year: rack after rack, from the floor up; none of them before the
    /// first.</summary>
    public FabricGroup HostGroup(int kind, int year)
    {
        if (groups.TryGetValue((kind, year), out var found)) return found;
        var host = Hosts[kind];
        var count = year < 0 ? 0 : counts[year][kind];
        var places = Enumerable.Range(0, count).Select(i => new FabricPlace(
            Hall.HostRacks[Hall.FirstRack[kind] + (i / host.Demand.PerRack)],
            Hall.HostUnits(Hall.FirstRack[kind] + (i / host.Demand.PerRack), host)[i % host.Demand.PerRack]));
        var group = new FabricGroup(host.Demand.Name, SwitchRole.Host, host.Model, host.Cards, count, [.. places]);
        return groups[(kind, year)] = group;
    }
}
