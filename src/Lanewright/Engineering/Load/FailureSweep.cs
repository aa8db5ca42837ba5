using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>What each single failure does, computed once for each class of failures that are provably alike.</summary>
public sealed class FailureSweep
{
    /// <summary>Decimals of Gb/s beyond which two sums are the same.</summary>
    private const int Places = 3 * 2;

    private FailureSweep(Share intact, double unroutedGigabits, ImmutableArray<FailureClass> classes)
    {
        Intact = intact;
        IntactUnroutedGigabits = unroutedGigabits;
        Classes = classes;
    }

    /// <summary>How full the busiest link is while nothing is down.</summary>
    public Share Intact { get; }

    /// <summary>Demand, in Gb/s, that has no path even while nothing is down.</summary>
    public double IntactUnroutedGigabits { get; }

    /// <summary>All classes, those that cost most first: hosts lost, then traffic lost, then fullest link, then the order of the
    /// units.</summary>
    public ImmutableArray<FailureClass> Classes { get; }

    /// <summary>Sweeps over all units. Null when the ideal split is asked for a fabric beyond
    /// <see cref="IdealSplit.MostVariables"/>.</summary>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public static FailureSweep? Of(
        FabricGraph graph, TrafficMatrix traffic, SplitRule rule, ImmutableArray<FailureUnit> units, CancellationToken cancel = default)
    {
        cancel.ThrowIfCancellationRequested();
        if (LoadSolver.Of(graph, traffic, rule) is not { } intact) return null;
        var classes = UnitClasses.Of(graph, traffic, units);
        // A link, its modules and a cable with no other link fail the same, whatever they are called.
        var outages = classes.GroupBy(c => units[c[0]].Outage, Outage.Alike).ToArray();
        var effects = new OutageEffect?[outages.Length];
        var trial = new OutageTrial(graph, traffic, rule);
        var options = new ParallelOptions { CancellationToken = cancel };
        Parallel.For(0, outages.Length, options, i => effects[i] = trial.Of(outages[i].Key));
        var effectOf = outages.SelectMany((o, i) => o.Select(c => (Unit: c[0], Effect: effects[i])))
            .ToDictionary(e => e.Unit, e => e.Effect);
        var result = new List<FailureClass>();
        for (var i = 0; i < classes.Length; i++)
        {
            if (effectOf[classes[i][0]] is not { } effect) return null;
            var kind = units[classes[i][0]].Kind;
            result.Add(new FailureClass(
                kind, classes[i], effect.MaxUtilisation, effect.BusiestLink, effect.MembersCut, effect.MembersDown, effect.UnroutedGigabits,
                effect.LostGigabits));
        }
        return new FailureSweep(intact.MaxUtilisation, intact.UnroutedGigabits, Ordered(result));
    }

    /// <summary>A sweep whose classes are known.</summary>
    internal static FailureSweep Of(Share intact, IEnumerable<FailureClass> classes) => new(intact, 0, Ordered(classes));

    private static ImmutableArray<FailureClass> Ordered(IEnumerable<FailureClass> classes) =>
    [
        .. classes.OrderByDescending(c => c.HostsLost).ThenByDescending(c => Math.Round(c.LostGigabits, Places))
            .ThenByDescending(c => c.MaxUtilisation).ThenBy(c => c.Units[0]),
    ];
}
