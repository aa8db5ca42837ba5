using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Everything there is to say about a wanted fabric.</summary>
/// <param name="Wanted">What was asked.</param>
/// <param name="Answer">The options, and the shapes that have none.</param>
/// <param name="Conflicts">Where nothing fits: every minimal set of wishes that cannot be had together.</param>
/// <param name="Relaxations">Where nothing fits: how far each wish has to give way.</param>
/// <param name="BreakEvens">Where something fits: what would change the answer; none when not asked for.</param>
public sealed record FabricStudy(
    WantedFabric Wanted, SizingAnswer Answer, ImmutableArray<ImmutableArray<Wish>> Conflicts, ImmutableArray<Relaxation> Relaxations,
    ImmutableArray<BreakEven> BreakEvens)
{
    /// <summary>Answers a question.</summary>
    /// <param name="wanted">What is asked.</param>
    /// <param name="context">Limits, catalogue and policy.</param>
    /// <param name="withBreakEvens">Whether to find what would change the answer, which means to answer many more questions.</param>
    public static FabricStudy Of(WantedFabric wanted, FinderContext context, bool withBreakEvens)
    {
        var sizing = new Sizing(context);
        var answer = sizing.Of(wanted);
        if (answer.Options.IsEmpty)
        {
            ImmutableArray<FabricNeeds> Solve(WantedFabric question) => [.. sizing.Of(question).Options.Select(o => o.Needs)];
            var conflicts = Fabrics.Conflicts.Of(wanted, Solve);
            return new FabricStudy(wanted, answer, conflicts, new Relaxations(wanted, conflicts, Solve).All(), []);
        }
        return new FabricStudy(wanted, answer, [], [], withBreakEvens ? Fabrics.BreakEvens.Of(wanted, context) : []);
    }
}
