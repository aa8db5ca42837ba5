using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>The worst that any traffic can do after each single failure, computed once for each class of failures that are alike.</summary>
public static class HoseFailures
{
    /// <summary>Failures times links times bundles up to which each is tried.</summary>
    private const long MostWork = 6_000_000;

    /// <summary>Sweeps over all units; null where that is too much work, and under the ideal split.</summary>
    /// <param name="graph">The fabric, whole.</param>
    /// <param name="terminals">The hosts, and what each may send and receive.</param>
    /// <param name="rule">How traffic divides.</param>
    /// <param name="units">What may fail.</param>
    /// <param name="cancel">Breaks it off.</param>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public static FailureSweep? Of(FabricGraph graph, ImmutableArray<Terminal> terminals, SplitRule rule, ImmutableArray<FailureUnit> units,
        CancellationToken cancel)
    {
        if (rule == SplitRule.Ideal || terminals.IsEmpty) return null;
        cancel.ThrowIfCancellationRequested();
        var classes = UnitClasses.Of(graph, TrafficMatrix.AllToAll(terminals), units);
        var outages = classes.GroupBy(c => units[c[0]].Outage, Outage.Alike).ToArray();
        if ((long)outages.Length * graph.Links.Length * terminals.Length > MostWork) return null;
        var whole = new Islands(graph);
        var cutWhole = whole.MembersCut(whole);
        var found = new List<FailureClass>();
        foreach (var outage in outages)
        {
            var hurt = graph.Without(outage.Key);
            var worst = HoseWorstCase.OfFullest(hurt, terminals, rule, cancel).Worst;
            var cut = Math.Max(0, new Islands(hurt).MembersCut(whole) - cutWhole);
            var down = OutageTrial.MembersUp(graph) - OutageTrial.MembersUp(hurt);
            foreach (var alike in outage)
                found.Add(new FailureClass(units[alike[0]].Kind, alike, worst?.Utilisation ?? default,
                    worst is null ? -1 : hurt.OriginOfLink(worst.Link), cut, down, 0, 0));
        }
        var intact = HoseWorstCase.OfFullest(graph, terminals, rule, cancel).Worst?.Utilisation ?? default(Share);
        return FailureSweep.Of(intact, found);
    }
}
