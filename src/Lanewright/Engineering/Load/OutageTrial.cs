namespace Lanewright.Engineering.Load;

/// <summary>Tries outages on one fabric with one traffic and one rule.</summary>
internal sealed class OutageTrial
{
    private readonly FabricGraph graph;
    private readonly TrafficMatrix traffic;
    private readonly SplitRule rule;
    private readonly Islands whole;
    private readonly int cutWhole;

    /// <summary>Looks at the fabric while it is whole.</summary>
    public OutageTrial(FabricGraph graph, TrafficMatrix traffic, SplitRule rule)
    {
        this.graph = graph;
        this.traffic = traffic;
        this.rule = rule;
        whole = new Islands(graph);
        cutWhole = whole.MembersCut(whole);
    }

    /// <summary>What an outage does; null when the ideal split is too large to solve.</summary>
    public OutageEffect? Of(Outage outage)
    {
        var hurt = graph.Without(outage);
        if (LoadSolver.Of(hurt, traffic, rule) is not { } loads) return null;
        var busiest = loads.BusiestLink;
        var cut = new Islands(hurt).MembersCut(whole);
        var down = MembersUp(graph) - MembersUp(hurt);
        var left = new FabricTraffic(hurt, traffic);
        var unsent = down > 0 || left.IsLess ? left.Unsent : 0;
        return new OutageEffect(
            loads.MaxUtilisation, busiest < 0 ? busiest : hurt.OriginOfLink(busiest), Math.Max(0, cut - cutWhole), down,
            loads.UnroutedGigabits, loads.UnroutedGigabits + unsent);
    }

    /// <summary>Hosts that are up.</summary>
    public static int MembersUp(FabricGraph graph) =>
        Enumerable.Range(0, graph.Nodes.Length).Where(n => graph.Nodes[n].IsTerminal && !graph.IsDown(n)).Sum(n => graph.Nodes[n].Members);
}
