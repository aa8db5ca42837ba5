using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>What each single failure does, computed once for each class of failures that are provably alike.</summary>
public sealed class FailureSweep
{
    private FailureSweep(Share intact, ImmutableArray<FailureClass> classes)
    {
        Intact = intact;
        Classes = classes;
    }

    /// <summary>How full the busiest link is while nothing is down.</summary>
    public Share Intact { get; }

    /// <summary>All classes, the worst first: most members cut, then fullest link, then the order of the units.</summary>
    public ImmutableArray<FailureClass> Classes { get; }

    /// <summary>Sweeps over all units. Null when the ideal split is asked for a fabric beyond <see cref="IdealSplit.MostVariables"/>.</summary>
    public static FailureSweep? Of(FabricGraph graph, TrafficMatrix traffic, SplitRule rule, ImmutableArray<FailureUnit> units) =>
        throw new NotSupportedException();
}
