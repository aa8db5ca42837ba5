using System.Collections.Immutable;
using Lanewright.Model.Demands;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>What a network does with one demand: loads, the worst case, failures.</summary>
public sealed class DemandStudy
{
    private readonly Lazy<LinkLoads?> loads;
    private readonly Lazy<HoseWorstCase?> worstCase;
    private readonly Lazy<SymmetryClasses> classes;
    private readonly Lazy<FailureSweep?> sweep;
    private readonly Lazy<FailureSweep?> hoseSweep;
    private readonly Lazy<Throughput?> throughput;
    private readonly Lazy<Share[]> worstOf;

    internal DemandStudy(NetworkStudy fabric, Demand demand, IReadOnlyList<Demand> together)
    {
        Fabric = fabric;
        Demand = demand;
        Traffic = together.Select(d => DemandTraffic.Of(fabric.Map, d)).OfType<TrafficMatrix>()
            .Aggregate((TrafficMatrix?)null, (sum, other) => sum is null ? other : sum + other);
        loads = new(() => Traffic is null ? null : LoadSolver.Of(Solved, Traffic, fabric.Rule));
        worstCase = new(() => IsHose
            ? WorstOf(fabric.Map.Terminals(demand.Senders, demand.Rate))
            : null);
        classes = new(() => IsHose
            ? SymmetryClasses.Of(fabric.InsideOrAll, TrafficMatrix.AllToAll(fabric.Map.Terminals(demand.Senders, demand.Rate)))
            : SymmetryClasses.Of(fabric.Map.Graph, Traffic));
        sweep = new(() => Traffic is null ? null
            : fabric.Earlier.Of(nameof(Sweep), LoadQuestion.Of(fabric.Map.Inside, Traffic, fabric.Rule, fabric.Failures),
                () => FailureSweep.Of(fabric.Map.Inside, Traffic, fabric.Rule, fabric.Failures, fabric.Cancel)));
        hoseSweep = new(() => IsHose
            ? HoseFailures.Of(fabric.InsideOrAll, fabric.Map.Terminals(demand.Senders, demand.Rate), fabric.Rule, fabric.Failures,
                fabric.Cancel)
            : null);
        worstOf = new(WorstOfLinks);
        throughput = new(() => Traffic is null ? null : Throughput.Of(fabric.Map.Graph, Traffic));
    }

    /// <summary>The network.</summary>
    public NetworkStudy Fabric { get; }

    /// <summary>The demand.</summary>
    public Demand Demand { get; }

    /// <summary>What is sent, with all that runs at the same time; null for a hose, and when the network reaches no two of its
    /// hosts.</summary>
    public TrafficMatrix? Traffic { get; }

    /// <summary>Whether any traffic is meant that keeps to the hosts' rates.</summary>
    public bool IsHose => Demand.Kind == DemandKind.Hose;

    /// <summary>Loads of the links; null for a hose, without traffic, and where the ideal split is too large to solve.</summary>
    public LinkLoads? Loads => loads.Value;

    /// <summary>The worst case of a hose; null for other demands, and where the ideal split is too large to solve.</summary>
    public HoseWorstCase? WorstCase => worstCase.Value;

    /// <summary>What each single failure does; null for a hose, without traffic, and where the ideal split is too large to solve.</summary>
    public FailureSweep? Sweep => sweep.Value;

    /// <summary>Collisions of few large flows; null where the demand states none.</summary>
    public FlowCollisions? Collisions => FlowCollisions.Of(this);

    /// <summary>What waits before the receiver of an incast when all its senders hand over a burst at once; null for other
    /// demands.</summary>
    public IncastQueue? Queue
    {
        get
        {
            if (Demand.Kind != DemandKind.Incast || Traffic is null) return null;
            var burst = Fabric.Map.Plan.Standards.Practice("burst", "size").Value;
            var taken = Fabric.Map.LineRate(Demand.Receivers[0]);
            var rates = Demand.Senders.Except(Demand.Receivers)
                .Select(s => Fabric.Map.LineRate(s) is { BitsPerSecond: > 0 } line ? Demand.Rate ?? line : default)
                .Where(r => r.BitsPerSecond > 0)
                .ToList();
            return rates.Count == 0 || taken.BitsPerSecond == 0 ? null : IncastQueue.Of(rates, taken, burst);
        }
    }

    /// <summary>The share of time in which no link is fuller than allowed and no host cut off; null where the plan states no failure rates,
    /// and without a sweep.</summary>
    public ShareInterval? Availability
    {
        get
        {
            if (Fabric.Policy.FailureRates.IsEmpty || Sweep is not { } sweep) return null;
            var up = new UnitAvailability(Fabric.Policy, Fabric.Failures);
            return Load.Availability.OfFabric(sweep, Share.From(Limit), up.Of);
        }
    }

    /// <summary>Kinds of parts whose failures are tried and whose rate the plan does not state: the share of time takes them as always up.
    /// Spans and ducts between sites are among them; what cuts take is told of each line.</summary>
    public ImmutableArray<FailureKind> TakenAsUp => Fabric.Policy.FailureRates.IsEmpty || Sweep is null ? [] :
        [.. Fabric.Failures.Select(u => (u.Kind, u.Model)).Distinct()
            .Where(u => UnitAvailability.RateOf(Fabric.Policy, u.Kind, u.Model) is null).Select(u => u.Kind).Distinct().Order()];

    /// <summary>What every two failures at once do; null without traffic and under the ideal split.</summary>
    /// <param name="most">Pairs computed at most; more are sampled.</param>
    /// <param name="seed">Fixes the sample.</param>
    public FailurePairs? Pairs(int most, ulong seed) => Traffic is null || Fabric.Rule == SplitRule.Ideal
        ? null
        : FailurePairs.Of(Fabric.Map.Inside, Traffic, Fabric.Rule, Fabric.Failures, most, seed);

    /// <summary>What the worst traffic of a hose does after each single failure; null for other demands, under the ideal split, and where
    /// it is too much work.</summary>
    private FailureSweep? HoseSweep => hoseSweep.Value;

    /// <summary>How far the demand can grow under the best split; null without traffic.</summary>
    public Throughput? BestThroughput => throughput.Value;

    /// <summary>How far the demand can grow under the split of the network; null without traffic, and where the ideal split is too large to
    /// solve.</summary>
    public Throughput? Throughput
    {
        get
        {
            if (Fabric.Rule == SplitRule.Ideal || Traffic is null) return BestThroughput;
            return Loads is { MaxUtilisation.Value: > 0 } solved ? Load.Throughput.OfLoads(solved) : null;
        }
    }

    /// <summary>How full the fullest link is. Host links count where they are asked for more than they carry, and where there are no
    /// others: a host that fills its own link is no fault of the network.</summary>
    public Share MaxUtilisation => Enumerable.Range(0, Links.Length).Where(Counts).Select(Utilisation).DefaultIfEmpty().Max();

    /// <summary>How full the fullest host link is.</summary>
    public Share MaxAccessUtilisation =>
        Enumerable.Range(0, Links.Length).Where(l => Fabric.Map.IsAccess(Links[l])).Select(Utilisation).DefaultIfEmpty().Max();

    /// <summary>Whether a link is fuller than the policy allows, or a host link than full.</summary>
    public bool IsOverloaded => MaxUtilisation.Value > Limit || MaxAccessUtilisation > Full;

    /// <summary>Single links that are overloaded.</summary>
    public long OverloadedLinks => Enumerable.Range(0, Links.Length)
        .Where(l => Fabric.Map.IsAccess(Links[l]) ? Utilisation(l) > Full : Utilisation(l).Value > Limit)
        .Sum(l => (long)Links[l].Count);

    private double Limit => Fabric.Policy.MostUtilisation.Value * Full.Value;

    /// <summary>How full the fullest link between switches is while all works: what failures are held against.</summary>
    public Share Intact =>
        Enumerable.Range(0, Links.Length).Where(l => !Fabric.Map.IsAccess(Links[l])).Select(Utilisation).DefaultIfEmpty().Max();

    /// <summary>What each single failure does, those that cost most first: hosts lost, then traffic lost, then the fullest link between
    /// switches. None without a sweep; of a hose what its worst traffic does.</summary>
    public ImmutableArray<FailureClass> Failures => (Sweep ?? HoseSweep) is not { } known ? [] :
    [
        .. known.Classes.OrderByDescending(c => c.HostsLost).ThenByDescending(c => Math.Round(c.LostGigabits, Places))
            .ThenByDescending(c => Math.Round(After(c).Value, Places)).ThenBy(c => c.Units[0]),
    ];

    /// <summary>Whether it is known what single failures do; not without traffic, and not where that is too much work or the split has no
    /// answer to it.</summary>
    public bool AreFailuresWorkedOut => (Sweep ?? HoseSweep) is not null;

    /// <summary>How full the fullest link between switches is with something down; null without traffic, and where the ideal split is
    /// too large to solve.</summary>
    public Share? AfterLosing(Outage outage)
    {
        if (Traffic is null || new OutageTrial(Fabric.Map.Inside, Traffic, Fabric.Rule).Of(outage) is not { } effect) return null;
        return effect.BusiestLink < 0 || Fabric.Map.IsAccess(Links[effect.BusiestLink]) ? default(Share) : effect.MaxUtilisation;
    }

    /// <summary>How full the fullest link between switches is after a failure. Host links do not count: a host that lost one of two is
    /// asked for more than the other carries whenever it had filled both.</summary>
    public Share After(FailureClass failure) =>
        failure.BusiestLink < 0 || Fabric.Map.IsAccess(Links[failure.BusiestLink]) ? default : failure.MaxUtilisation;

    /// <summary>Demand without a path, in Gb/s.</summary>
    public double UnroutedGigabits => Loads?.UnroutedGigabits ?? 0;

    private ImmutableArray<FabricLink> Links => Fabric.Map.Graph.Links;

    /// <summary>The ideal split must not think itself done when the fullest link is one that a host fills by itself; that hosts send no
    /// more over a port than it carries it sees to all the same.</summary>
    private FabricGraph Solved => Fabric.Rule == SplitRule.Ideal ? Fabric.InsideOrAll : Fabric.Map.Graph;

    /// <summary>What flows over a link from one of its ends, in Gb/s; nothing for a hose.</summary>
    public double GigabitsFrom(int link, int node) =>
        Loads is not { } solved ? 0 : Links[link].A == node ? solved.GigabitsFromA(link) : solved.GigabitsFromB(link);

    /// <summary>How full the fuller direction of a link is.</summary>
    public Share Utilisation(int link)
    {
        if (Loads is { } solved) return Share.From(Math.Max(solved.GigabitsFromA(link), solved.GigabitsFromB(link)) / Links[link].Gigabits);
        if (!IsHose) return default;
        return Fabric.Map.IsAccess(Links[link]) && Fabric.HasInside ? HoseAtHost(Links[link]) : worstOf.Value[link];
    }

    private HoseWorstCase? WorstOf(ImmutableArray<Terminal> hosts) => Fabric.Rule == SplitRule.Ideal
        ? Fabric.IdealWorst(hosts)
        : Fabric.Earlier.Of(nameof(HoseWorstCase), LoadQuestion.Of(Fabric.InsideOrAll, hosts, Fabric.Rule),
            () => HoseWorstCase.Of(Fabric.InsideOrAll, hosts, Fabric.Rule, Fabric.Cancel));

    /// <summary>The worst case of each link: that of the link which stands for its class.</summary>
    private Share[] WorstOfLinks()
    {
        var byClass = new Dictionary<int, Share>();
        foreach (var worst in WorstCase?.Links ?? [])
        {
            var known = byClass.GetValueOrDefault(ClassOf(worst.Link));
            byClass[ClassOf(worst.Link)] = worst.Utilisation > known ? worst.Utilisation : known;
        }
        return [.. Enumerable.Range(0, Links.Length).Select(l => byClass.GetValueOrDefault(ClassOf(l)))];
    }

    /// <summary>A hose fills the links of a host as far as the rate stated for it does.</summary>
    private Share HoseAtHost(FabricLink link)
    {
        var host = Fabric.Map.Devices(Fabric.Map.Graph.Nodes[link.A].IsTerminal ? link.A : link.B)[0];
        var most = Fabric.Map.LineRate(host).Gigabits;
        if (!Demand.Senders.Contains(host) || most <= 0) return default;
        return Share.From((Demand.Rate?.Gigabits ?? most) / most);
    }

    /// <summary>The fullest links, one of each class that is alike, fullest first.</summary>
    public ImmutableArray<BusyLink> Busiest(int most)
    {
        var sizes = new Dictionary<int, long>();
        for (var link = 0; link < Links.Length; link++)
            sizes[ClassOf(link)] = sizes.GetValueOrDefault(ClassOf(link)) + Links[link].Count;
        return
        [
            .. Enumerable.Range(0, Links.Length)
                .Where(l => Counts(l) && Utilisation(l) > default(Share))
                .OrderByDescending(l => Math.Round(Utilisation(l).Value, Places)).ThenBy(l => l)
                .DistinctBy(ClassOf)
                .Take(most)
                .Select(l => Busy(l, sizes[ClassOf(l)])),
        ];
    }

    /// <summary>What stands for all links like a link.</summary>
    public int ClassOf(int link) => classes.Value.LinkClasses[link];

    /// <summary>What stands for all nodes like a node.</summary>
    public int AlikeOf(int node) => classes.Value.NodeClasses[node];

    private BusyLink Busy(int link, long classSize)
    {
        var ends = Links[link];
        // The worst case of a hose is known by class, and classes do not tell directions apart.
        // Where both directions are equally full, the one up is named.
        var up = Fabric.Map.Tier(ends.A) <= Fabric.Map.Tier(ends.B);
        var (from, to) = up ? (ends.A, ends.B) : (ends.B, ends.A);
        if (Math.Round(GigabitsFrom(link, to) - GigabitsFrom(link, from), Places) > 0) (from, to) = (to, from);
        var full = Utilisation(link);
        return new BusyLink(link, from, to, ends.Rate, ends.Count, full.Value * ends.Gigabits, full, classSize);
    }

    private bool Counts(int link) => !Fabric.Map.IsAccess(Links[link]) || !Fabric.HasInside || Utilisation(link) > Full;

    /// <summary>Decimals beyond which two loads are the same: sums in another order differ in the last places.</summary>
    internal const int Places = 3 * 3;

    /// <summary>Full, with room for rounding.</summary>
    internal static Share Full { get; } = Share.From(1 + 1e-9);
}
