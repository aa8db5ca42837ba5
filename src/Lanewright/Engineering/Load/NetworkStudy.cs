using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Load;

/// <summary>A network that carries demands, and what can be said of it whatever they are.</summary>
public sealed class NetworkStudy
{
    private readonly Lazy<ImmutableArray<FailureUnit>> failures;
    private readonly Lazy<Bisection> bisection;
    private readonly Lazy<HoseWorstCase?> worstCase;
    private readonly Lazy<PathLatency?> latency;

    internal NetworkStudy(
        FabricMap map, LinkDesign design, PlanBooks books, Policy policy, SplitRule rule, EarlierLoads earlier,
        CancellationToken cancel)
    {
        Cancel = cancel;
        Earlier = earlier;
        Map = map;
        Policy = policy;
        Rule = rule;
        failures = new(() => PlanFailures.Of(map, design, books));
        bisection = new(() => Bisection.Of(map.Graph, AllHosts()));
        worstCase = new(() => rule == SplitRule.Ideal
            ? IdealWorst(AllHosts())
            : earlier.Of(nameof(WorstCase), LoadQuestion.Of(InsideOrAll, AllHosts(), rule),
                () => HoseWorstCase.OfFullest(InsideOrAll, AllHosts(), rule, cancel)));
        latency = new(() => PathLatency.Of(map, design));
        HasInside = map.Graph.Links.Any(l => !map.IsAccess(l));
    }

    /// <summary>The worst that any traffic between hosts can do under the ideal split.</summary>
    internal HoseWorstCase? IdealWorst(ImmutableArray<Terminal> hosts) => Earlier.Of(
        nameof(IdealWorstCase), LoadQuestion.Of(InsideOrAll, hosts, SplitRule.Ideal), () => IdealWorstCase.Of(InsideOrAll, hosts, Cancel));

    /// <summary>The network as a graph.</summary>
    public FabricMap Map { get; }

    /// <summary>What holds for the project.</summary>
    public Policy Policy { get; }

    /// <summary>How its switches split traffic.</summary>
    public SplitRule Rule { get; }

    /// <summary>Breaks off what takes long to reckon.</summary>
    internal CancellationToken Cancel { get; }

    /// <summary>What was reckoned before.</summary>
    internal EarlierLoads Earlier { get; }

    /// <summary>Whether any link joins two switches.</summary>
    public bool HasInside { get; }

    /// <summary>The graph in which host links are never the fullest; where there are no others, the graph as it is.</summary>
    public FabricGraph InsideOrAll => HasInside ? Map.Inside : Map.Graph;

    /// <summary>Everything that can fail.</summary>
    public ImmutableArray<FailureUnit> Failures => failures.Value;

    /// <summary>What one half of the hosts can send to the other.</summary>
    public Bisection Bisection => bisection.Value;

    /// <summary>The worst that any traffic of all hosts can do to a link between switches; null where the ideal split is too large to
    /// solve.</summary>
    public HoseWorstCase? WorstCase => worstCase.Value;

    /// <summary>The worst of a case between switches: host links do not count where there are others, as they were made wide to keep out
    /// of the question.</summary>
    public LinkWorstCase? WorstInside(HoseWorstCase worst) =>
        worst.Links.FirstOrDefault(l => !HasInside || !Map.IsAccess(Map.Graph.Links[l.Link]));

    /// <summary>Oversubscription as built, tier by tier from the hosts up.</summary>
    public ImmutableArray<TierOversubscription> Oversubscription => TierOversubscription.Of(Map.Network);

    /// <summary>The ratio the plan wants of a tier: what is wanted of the hall its worst switch stands in, or the policy's; null when
    /// neither says one.</summary>
    public Ratio? WantedOf(TierOversubscription tier) =>
        Map.Plan.Wanted is { } wanted && wanted.Concerns(Map.Plan.Devices.Rack(tier.Device))
            ? wanted.OversubscriptionOf(tier.Tier - 1)
            : Ratio.OfTier(Map.Plan.Policy.Oversubscription, tier.Tier - 1);

    /// <summary>Delay of the shortest and the longest way between hosts; null without one.</summary>
    public PathLatency? Latency => latency.Value;

    private ImmutableArray<Terminal> AllHosts() =>
        Map.Terminals(Enumerable.Range(0, Map.Plan.Devices.Count).Where(d => !Map.Network.IsSwitch(d) && Map.NodeOf(d) >= 0), rate: null);
}
