using System.Collections.Immutable;
using Lanewright.Engineering.Plant;

namespace Lanewright.Engineering.Choice;

/// <summary>Every way to make links that ask the same, and the orders they are wanted in again and again. Each order is made when it is
/// first wanted.</summary>
/// <param name="all">The ways.</param>
/// <param name="ranking">Puts them in order.</param>
internal sealed class FoundSolutions(ImmutableArray<Solution> all, Ranking ranking)
{
    private readonly Lazy<ImmutableArray<Solution>> byNewPrice = new(() => ranking.Order(all, Solution.NewPrice));
    private readonly Lazy<ImmutableArray<Solution>> byBatchPrice = new(() => ranking.Order(all, new StockLedger([]).PriceOf));

    /// <summary>The ways, as they were found.</summary>
    public ImmutableArray<Solution> All => all;

    /// <summary>Best first, by the price of one link's share bought new.</summary>
    public ImmutableArray<Solution> ByNewPrice => byNewPrice.Value;

    /// <summary>Best first, by the price of one link of a batch after which every part is used up whole, with nothing in stock.</summary>
    public ImmutableArray<Solution> ByBatchPrice => byBatchPrice.Value;

    /// <summary>The same ways through trunks.</summary>
    public FoundSolutions Through(TrunkWay way) => new([.. all.Select(s => s with { Through = way })], ranking);
}
