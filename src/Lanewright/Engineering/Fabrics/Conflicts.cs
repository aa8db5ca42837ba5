using System.Collections.Immutable;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Tells which wishes cannot be had together.</summary>
public static class Conflicts
{
    /// <summary>Every minimal set of wishes no candidate keeps, smaller sets first; none when some candidate keeps them all.</summary>
    /// <param name="wanted">What is wanted.</param>
    /// <param name="candidates">Designs around the wishes; those that do not fit at all count for nothing.</param>
    public static ImmutableArray<ImmutableArray<Wish>> Of(WantedFabric wanted, ImmutableArray<FabricNeeds> candidates)
    {
        var wishes = WishList.Of(wanted);
        var broken = candidates.Where(c => c.Fits).Select(c => WishList.Broken(wishes, c));
        return [.. ConflictSets.Of(wishes.Length, broken).Select(set => set.Select(i => wishes[i]).ToImmutableArray())];
    }
}
