using System.Collections.Concurrent;
using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Everything there is to say about a wanted fabric.</summary>
public sealed class FabricStudy
{
    private const long MostQuick = 6_000;
    private const long MostGlanced = 4_000;

    /// <summary>Most questions asked for a break-even look into few of so many, as nothing dearer than a neighbour's answer has to
    /// be.</summary>
    private const long MostDrawn = 100_000;

    private readonly Lock telling = new();
    private readonly ImmutableArray<Lazy<BreakEven>> breakEvens;
    private readonly Lazy<(ImmutableArray<ImmutableArray<Wish>> All, bool AreProven)> conflicts;
    private readonly Lazy<(ImmutableArray<Relaxation> All, bool AreProven)> relaxations;
    private readonly CancellationToken cancel;
    private Action<BreakEvenQuantity, int>? told;

    private FabricStudy(WantedFabric wanted, FinderContext context, Sizing sizing, SizingAnswer answer)
    {
        Wanted = wanted;
        Answer = answer;
        cancel = context.Cancel;
        breakEvens =
        [
            .. Quantities.Select(quantity => new Lazy<BreakEven>(
                () => Fabrics.BreakEvens.Of(quantity, wanted, context, (q, n) => told?.Invoke(q, n)))),
        ];
        var hostWishes = new HostWishes(wanted, sizing.HostRates);
        conflicts = new(() =>
        {
            if (!answer.Options.IsEmpty) return ([], true);
            var search = new ProvenSearch(sizing);
            var sets = Fabrics.Conflicts.Of(wanted, search.Any, () => search.IsLastProven);
            // Not even one host of each kind: then it is what is said of the hosts.
            if (sets.Any(c => c.IsEmpty))
            {
                sets = Fabrics.Conflicts.Of([.. WishList.Of(wanted), .. hostWishes.All],
                    isKept => search.Any(hostWishes.Without(WishList.Only(wanted, isKept), isKept)), () => search.IsLastProven);
            }
            return (sets, search.IsProven);
        });
        relaxations = new(() =>
        {
            var (sets, areProven) = conflicts.Value;
            // Where a search was broken off no conflict may be proven, and a design that keeps all but one wish still helps. Where nothing
            // is in the way, nothing can give way.
            if (!answer.Options.IsEmpty || sets.Any(c => c.IsEmpty) || (sets.IsEmpty && areProven)) return ([], true);
            var search = new ProvenSearch(sizing);
            var all = new Relaxations(wanted, sets, Solve, search.Any, sizing.Offer).All();
            if (sets.Any(c => c.Any(w => hostWishes.All.Any(h => h.Key == w.Key))))
                all = [.. all.Where(r => r.Wish.Key != HostWishes.PerRack), .. hostWishes.Relaxations(sets, search.Any, Solve)];
            return (all, search.IsProven);
        });

        ImmutableArray<FabricNeeds> Solve(WantedFabric question) => [.. sizing.Of(question).Options.Select(o => o.Needs)];
    }

    /// <summary>What was asked.</summary>
    public WantedFabric Wanted { get; }

    /// <summary>The options, and the shapes that have none.</summary>
    public SizingAnswer Answer { get; }

    /// <summary>Whether what would change the answer is found while somebody waits: a search of so many steps is repeated some dozens of
    /// times.</summary>
    public bool IsQuick => Answer.Looked <= MostQuick;

    /// <summary>The quantities of which documents draw what they would change: all, or none where that takes long.</summary>
    public ImmutableArray<BreakEvenQuantity> DrawnQuantities =>
        Answer.Looked > MostDrawn ? [] : Quantities;

    /// <summary>Where nothing fits: every minimal set of wishes that cannot be had together.</summary>
    public ImmutableArray<ImmutableArray<Wish>> Conflicts => conflicts.Value.All;

    /// <summary>Where nothing fits: how far each wish has to give way.</summary>
    public ImmutableArray<Relaxation> Relaxations => relaxations.Value.All;

    /// <summary>Whether these are all the conflicts there are: no search for one was broken off.</summary>
    public bool AreConflictsProven => conflicts.Value.AreProven;

    /// <summary>Whether conflicts and relaxations are proven: no search for one was broken off.</summary>
    public bool IsProven => conflicts.Value.AreProven && relaxations.Value.AreProven;

    /// <summary>Where something fits: what would change the answer, a quantity each. To find it many more questions are answered, once,
    /// when it is first asked for.</summary>
    public ImmutableArray<BreakEven> BreakEvens => BreakEvensOf(Quantities);

    /// <summary>The same for some quantities, looked for side by side: no one needs what another found.</summary>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public ImmutableArray<BreakEven> BreakEvensOf(ImmutableArray<BreakEvenQuantity> quantities)
    {
        // One by one, so that a long one does not wait behind another.
        Parallel.ForEach(Partitioner.Create(quantities, EnumerablePartitionerOptions.NoBuffering),
            new ParallelOptions { CancellationToken = cancel }, q => BreakEvenOf(q));
        return [.. quantities.Select(BreakEvenOf)];
    }

    /// <summary>The same for one quantity, which is found without the others.</summary>
    public BreakEven BreakEvenOf(BreakEvenQuantity quantity) => breakEvens[(int)quantity].Value;

    /// <summary>The same, told of each quantity and how many questions about it have been answered.</summary>
    public ImmutableArray<BreakEven> WorkOut(Action<BreakEvenQuantity, int> step)
    {
        told = (quantity, answers) =>
        {
            lock (telling) step(quantity, answers);
        };
        return BreakEvens;
    }

    /// <summary>Where something fits, the quantities that may change the answer.</summary>
    private ImmutableArray<BreakEvenQuantity> Quantities => Answer.Options.IsEmpty ? [] : [.. Enum.GetValues<BreakEvenQuantity>()];

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
        return new FabricStudy(wanted, context, sizing, BeatenOptions.Lost(sizing.Of(wanted, step), wanted));
    }
}
