using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Everything there is to say about a wanted fabric.</summary>
public sealed class FabricStudy
{
    private const long MostQuick = 6_000;
    private const long MostGlanced = 4_000;

    private readonly Lazy<ImmutableArray<BreakEven>> breakEvens;
    private readonly Lazy<ImmutableArray<ImmutableArray<Wish>>> conflicts;
    private readonly Lazy<ImmutableArray<Relaxation>> relaxations;
    private Action<BreakEvenQuantity>? told;

    private FabricStudy(WantedFabric wanted, FinderContext context, Sizing sizing, SizingAnswer answer)
    {
        Wanted = wanted;
        Answer = answer;
        ImmutableArray<FabricNeeds> Solve(WantedFabric question) => [.. sizing.Of(question).Options.Select(o => o.Needs)];
        breakEvens = new(() => answer.Options.IsEmpty ? [] : Fabrics.BreakEvens.Of(wanted, context, q => told?.Invoke(q)));
        var isLastProven = true;
        ImmutableArray<FabricNeeds> Any(WantedFabric question)
        {
            var found = sizing.Any(question, out isLastProven);
            if (found.IsEmpty && !isLastProven) IsProven = false;
            return found;
        }
        conflicts = new(() => answer.Options.IsEmpty ? Fabrics.Conflicts.Of(wanted, Any, () => isLastProven) : []);
        // Where a search was broken off no conflict may be proven, and a design that keeps all but one wish still helps. Where nothing is
        // in the way, nothing can give way.
        relaxations = new(() => answer.Options.IsEmpty && !conflicts.Value.Any(c => c.IsEmpty) && (conflicts.Value.Any() || !IsProven)
            ? new Relaxations(wanted, conflicts.Value, Solve, Any).All()
            : []);
    }

    /// <summary>What was asked.</summary>
    public WantedFabric Wanted { get; }

    /// <summary>The options, and the shapes that have none.</summary>
    public SizingAnswer Answer { get; }

    /// <summary>Whether what would change the answer is found in some seconds: a search of so many steps is repeated some dozens of times.
    /// Documents that nobody waits for leave it out otherwise.</summary>
    public bool IsQuick => Answer.Looked <= MostQuick;

    /// <summary>Where nothing fits: every minimal set of wishes that cannot be had together.</summary>
    public ImmutableArray<ImmutableArray<Wish>> Conflicts => conflicts.Value;

    /// <summary>Where nothing fits: how far each wish has to give way.</summary>
    public ImmutableArray<Relaxation> Relaxations => relaxations.Value;

    /// <summary>Whether conflicts and relaxations, as far as they were worked out, are proven: no search for one was broken off.</summary>
    public bool IsProven { get; private set; } = true;

    /// <summary>Where something fits: what would change the answer, a quantity each. To find it many more questions are answered, once,
    /// when it is first asked for.</summary>
    public ImmutableArray<BreakEven> BreakEvens => breakEvens.Value;

    /// <summary>The same, told of each quantity before it is worked out.</summary>
    public ImmutableArray<BreakEven> WorkOut(Action<BreakEvenQuantity> step)
    {
        told = step;
        return breakEvens.Value;
    }

    /// <summary>A short look at whether anything can be had: what rules out each shape where nothing can. Null where something can, and
    /// for fabrics so large that even a look takes long.</summary>
    public static ImmutableArray<ShapeLost>? Glance(WantedFabric wanted, FinderContext context)
    {
        var ports = wanted.Hosts.Sum(h => (long)HostBuild.CountIn(h, wanted.Years, wanted.Growth) * h.Ports);
        return ports > MostGlanced ? null : new Sizing(context, SizingEffort.Glance).RuledOut(wanted);
    }

    /// <summary>Answers a question.</summary>
    /// <param name="wanted">What is asked.</param>
    /// <param name="context">Limits, catalogue and policy.</param>
    /// <param name="step">Told of each shape before it is searched; null when nobody waits.</param>
    public static FabricStudy Of(WantedFabric wanted, FinderContext context, Action<FabricShape>? step = null)
    {
        var sizing = new Sizing(context);
        return new FabricStudy(wanted, context, sizing, sizing.Of(wanted, step));
    }
}
