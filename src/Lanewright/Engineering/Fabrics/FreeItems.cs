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

    /// <summary>Hundredths that one more costs at least.</summary>
    public long PriceOf(ICatalogueItem item) => counts.ContainsKey(item.Name) ? 0 : (long)item.Price.Hundredths;

    /// <summary>Hundredths that so many cost at least.</summary>
    public long PriceOf(ICatalogueItem item, long count) => Math.Max(0, count - CountOf(item)) * (long)item.Price.Hundredths;
}
