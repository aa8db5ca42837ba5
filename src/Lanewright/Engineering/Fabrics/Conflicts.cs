using System.Collections.Immutable;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Tells which wishes cannot be had together. Designs are found only as they are needed: the minimal sets that all designs known
/// so far break are asked for by themselves, and either one is answered with a design that keeps it, which joins the known ones, or
/// nothing keeps it and it is a conflict, minimal because each of its parts is kept by some design.</summary>
public static class Conflicts
{
    /// <summary>Every minimal set of wishes no design keeps, smaller sets first; none when some design keeps them all.</summary>
    /// <param name="wanted">What is wanted.</param>
    /// <param name="solve">Some designs that keep everything asked for; none when nothing does.</param>
    /// <param name="isProven">Whether the last answer without a design is proven to have none; null where all are.</param>
    public static ImmutableArray<ImmutableArray<Wish>> Of(
        WantedFabric wanted, Func<WantedFabric, ImmutableArray<FabricNeeds>> solve, Func<bool>? isProven = null) =>
        Of(WishList.Of(wanted), isKept => solve(WishList.Only(wanted, isKept)), isProven);

    /// <summary>The same of any wishes.</summary>
    /// <param name="wishes">The wishes.</param>
    /// <param name="solve">Some designs that keep the wishes whose keys stay; none when nothing does.</param>
    /// <param name="isProven">Whether the last answer without a design is proven to have none; null where all are.</param>
    internal static ImmutableArray<ImmutableArray<Wish>> Of(
        ImmutableArray<Wish> wishes, Func<Func<string, bool>, ImmutableArray<FabricNeeds>> solve, Func<bool>? isProven = null)
    {
        var broken = new List<uint>();
        var (asked, open) = (new HashSet<uint>(), new HashSet<uint>());
        while (true)
        {
            var sets = ConflictSets.Of(wishes.Length, broken);
            if (sets.Select(Bits).Where(s => !asked.Contains(s)).Select(s => (uint?)s).FirstOrDefault() is not { } next)
                return [.. sets.Where(s => !open.Contains(Bits(s))).Select(set => set.Select(i => wishes[i]).ToImmutableArray())];
            var designs = solve(k => (next & (1u << IndexOf(wishes, k))) != 0);
            if (designs.IsEmpty) asked.Add(next);
            // A search that was broken off proves nothing: such a set is neither told nor looked into further.
            if (designs.IsEmpty && isProven?.Invoke() == false) open.Add(next);
            // A design that was asked for keeps what was asked, whatever else it breaks.
            foreach (var design in designs) broken.Add(WishList.Broken(wishes, design) & ~next);
        }
    }

    private static int IndexOf(ImmutableArray<Wish> wishes, string key)
    {
        for (var i = 0; i < wishes.Length; i++)
            if (wishes[i].Key == key) return i;
        return wishes.Length;
    }

    private static uint Bits(ImmutableArray<int> members) => members.Aggregate(0u, (set, m) => set | (1u << m));
}
