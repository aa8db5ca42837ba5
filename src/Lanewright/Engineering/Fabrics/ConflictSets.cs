using System.Collections.Immutable;
using System.Numerics;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Finds every minimal set of wishes that cannot be had together.</summary>
public static class ConflictSets
{
    /// <summary>More wishes than this no question has; the subsets of so many are still listed at once.</summary>
    public const int MostWishes = 20;

    /// <summary>The sets, smaller ones first, then by the wishes in them; none when some candidate violates nothing. A set of wishes
    /// cannot be had when every candidate violates one of them, so these are the minimal hitting sets of what candidates violate.
    /// Without any candidate the empty set is the answer: nothing was wished and still nothing is there.</summary>
    /// <param name="wishes">How many wishes there are.</param>
    /// <param name="violated">For every candidate the wishes it violates, one bit each.</param>
    public static ImmutableArray<ImmutableArray<int>> Of(int wishes, IEnumerable<uint> violated)
    {
        if (wishes is < 0 or > MostWishes) throw new ArgumentOutOfRangeException(nameof(wishes));
        var smallest = Smallest(violated);
        var found = new List<uint>();
        if (smallest.Contains(0u)) return [];
        // By size, so that whatever holds a set found before is no longer minimal and is passed over.
        var order = Enumerable.Range(0, 1 << wishes).Select(s => (uint)s).OrderBy(BitOperations.PopCount).ThenBy(s => s, FirstWishFirst);
        foreach (var set in order)
        {
            if (found.Any(f => (f & set) == f) || smallest.Any(v => (v & set) == 0)) continue;
            found.Add(set);
        }
        return [.. found.Select(Members)];
    }

    /// <summary>The sets that hold no other: whatever hits one of these hits all that hold it.</summary>
    private static List<uint> Smallest(IEnumerable<uint> violated)
    {
        var kept = new List<uint>();
        foreach (var set in violated.Distinct().OrderBy(BitOperations.PopCount).ThenBy(v => v))
            if (kept.All(k => (k & set) != k)) kept.Add(set);
        return kept;
    }

    private static ImmutableArray<int> Members(uint set)
    {
        var members = ImmutableArray.CreateBuilder<int>();
        for (var rest = set; rest != 0; rest &= rest - 1) members.Add(BitOperations.TrailingZeroCount(rest));
        return members.ToImmutable();
    }

    /// <summary>Orders sets of one size as their members would be listed.</summary>
    private static Comparer<uint> FirstWishFirst { get; } = Comparer<uint>.Create((left, right) =>
    {
        var apart = left ^ right;
        return apart == 0 ? 0 : (left & (apart & (~apart + 1))) != 0 ? -1 : 1;
    });
}
