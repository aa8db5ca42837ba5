using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Model.Demands;

namespace Lanewright.Engineering.Load;

/// <summary>What the networks of a plan carry: one study for each demand. Nothing is reckoned before somebody asks for it.</summary>
public sealed class LoadStudy
{
    private readonly LinkDesign design;
    private readonly PlanBooks books;
    private readonly EarlierLoads earlier;
    private readonly CancellationToken cancel;

    private LoadStudy(
        Plan plan, LinkDesign design, PlanBooks books, ImmutableArray<PlanNetwork> networks, ImmutableArray<Demand> demands,
        SplitRule rule, EarlierLoads earlier, CancellationToken cancel)
    {
        this.design = design;
        this.books = books;
        this.earlier = earlier;
        this.cancel = cancel;
        Networks = networks;
        var fabrics = ImmutableArray.CreateBuilder<NetworkStudy>();
        var studies = ImmutableArray.CreateBuilder<DemandStudy>();
        foreach (var network in networks)
        {
            var own = demands.Where(d => d.Network == network.Name).ToImmutableArray();
            if (own.IsEmpty) continue;
            NetworkStudy Fabric(Func<int, int> roleOf) =>
                new(FabricMap.Of(network, roleOf, books.Lines), design, books, plan.Policy, rule, earlier, cancel);
            var whole = Fabric(_ => 0);
            fabrics.Add(whole);
            foreach (var demand in own)
            {
                var together = own.Where(d => d == demand || demand.With.Contains(d.Name)).ToList();
                // Bundles never mix groups, so only a demand of parts of groups needs bundles of its own.
                var fabric = DemandRoles.AreByGroup(plan, together) ? whole : Fabric(DemandRoles.Of(plan, together));
                studies.Add(new DemandStudy(fabric, demand, together));
            }
        }
        Fabrics = fabrics.ToImmutable();
        Demands = [.. studies.OrderBy(s => s.Demand.Index)];
    }

    /// <summary>The networks of the plan, those without a demand as well.</summary>
    public ImmutableArray<PlanNetwork> Networks { get; }

    /// <summary>The networks that carry a demand, with bundles as large as can be.</summary>
    public ImmutableArray<NetworkStudy> Fabrics { get; }

    /// <summary>One study a demand, in the order of the demands.</summary>
    public ImmutableArray<DemandStudy> Demands { get; }

    /// <summary>The study with the fullest link; null without a demand.</summary>
    public DemandStudy? Worst => Demands.MaxBy(d => (d.MaxUtilisation, -d.Demand.Index));

    /// <summary>The study of a plan's own demands, with what was reckoned for earlier states of the plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="design">How its links are made.</param>
    /// <param name="books">What else is worked out of it.</param>
    /// <param name="earlier">What was reckoned before.</param>
    /// <param name="cancel">Breaks off what takes long to reckon, also later.</param>
    internal static LoadStudy Of(Plan plan, LinkDesign design, PlanBooks books, EarlierLoads earlier, CancellationToken cancel) =>
        new(plan, design, books, PlanNetwork.All(plan), plan.Demands, RuleOf(plan.Policy.Split), earlier, cancel);

    /// <summary>The same demands under another split. A plan that states no demand is asked two things of its main network: every host to
    /// every other at line rate, and the worst that any traffic can do.</summary>
    public LoadStudy Asked(Plan plan, SplitRule? rule)
    {
        var own = RuleOf(plan.Policy.Split);
        if (plan.Demands.IsEmpty) return new(plan, design, books, Networks, OwnQuestions(Networks[0]), rule ?? own, earlier, cancel);
        // What judging the plan has worked out already is not worked out again.
        return (rule ?? own) == own ? this : new(plan, design, books, Networks, plan.Demands, rule ?? own, earlier, cancel);
    }

    /// <summary>The network of a demand, with bundles as large as can be.</summary>
    public NetworkStudy FabricOf(DemandStudy study) => Fabrics.First(f => f.Map.Network == study.Fabric.Map.Network);

    /// <summary>The rule a plan's word for a split means.</summary>
    public static SplitRule RuleOf(TrafficSplit split) => split switch
    {
        TrafficSplit.PathWeighted => SplitRule.PathWeighted,
        TrafficSplit.Ideal => SplitRule.Ideal,
        _ => SplitRule.PerHop,
    };

    private static ImmutableArray<Demand> OwnQuestions(PlanNetwork network)
    {
        var hosts = Enumerable.Range(0, network.Plan.Devices.Count)
            .Where(d => !network.IsSwitch(d) && network.UpLinks(d).Length > 0)
            .ToImmutableArray();
        Demand Among(int index, string name, DemandKind kind) =>
            new() { Index = index, Name = name, Kind = kind, Senders = hosts, Receivers = hosts };
        return [Among(0, "all-to-all", DemandKind.AllToAll), Among(1, "hose", DemandKind.Hose)];
    }
}
