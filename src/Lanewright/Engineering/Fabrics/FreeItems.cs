using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What exists already: the first so many of an item cost nothing. For lower bounds an item that exists at all is free.</summary>
internal sealed class FreeItems(ImmutableArray<Reused> reuse)
{
    private readonly Dictionary<string, long> counts =
        reuse.GroupBy(r => r.Item.Name).ToDictionary(g => g.Key, g => g.Sum(r => (long)r.Count), StringComparer.Ordinal);

    public bool IsEmpty => counts.Count == 0;

    /// <summary>How many of an item exist.</summary>
    public long CountOf(ICatalogueItem item) => counts.GetValueOrDefault(item.Name);
}
