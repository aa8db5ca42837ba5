using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Everything there is to say about a wanted fabric.</summary>
public sealed class FabricStudy
{
    private readonly Lazy<ImmutableArray<BreakEven>> breakEvens;

    private FabricStudy(
        WantedFabric wanted, FinderContext context, SizingAnswer answer, ImmutableArray<ImmutableArray<Wish>> conflicts,
        ImmutableArray<Relaxation> relaxations)
    {
        Wanted = wanted;
        Answer = answer;
        Conflicts = conflicts;
        Relaxations = relaxations;
        breakEvens = new(() => answer.Options.IsEmpty ? [] : Fabrics.BreakEvens.Of(wanted, context));
    }

    /// <summary>What was asked.</summary>
    public WantedFabric Wanted { get; }

    /// <summary>The options, and the shapes that have none.</summary>
    public SizingAnswer Answer { get; }

    /// <summary>Where nothing fits: every minimal set of wishes that cannot be had together.</summary>
    public ImmutableArray<ImmutableArray<Wish>> Conflicts { get; }

    /// <summary>Where nothing fits: how far each wish has to give way.</summary>
    public ImmutableArray<Relaxation> Relaxations { get; }

    /// <summary>Where something fits: what would change the answer, a quantity each. To find it many more questions are answered, once,
    /// when it is first asked for.</summary>
    public ImmutableArray<BreakEven> BreakEvens => breakEvens.Value;

    /// <summary>Answers a question.</summary>
    /// <param name="wanted">What is asked.</param>
    /// <param name="context">Limits, catalogue and policy.</param>
    public static FabricStudy Of(WantedFabric wanted, FinderContext context)
    {
        var sizing = new Sizing(context);
        var answer = sizing.Of(wanted);
        if (!answer.Options.IsEmpty) return new FabricStudy(wanted, context, answer, [], []);
        ImmutableArray<FabricNeeds> Solve(WantedFabric question) => [.. sizing.Of(question).Options.Select(o => o.Needs)];
        var conflicts = Fabrics.Conflicts.Of(wanted, Solve);
        return new FabricStudy(wanted, context, answer, conflicts, new Relaxations(wanted, conflicts, Solve).All());
    }
}
