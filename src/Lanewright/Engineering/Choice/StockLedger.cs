using System.Collections.Immutable;
using Lanewright.Model;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Choice;

/// <summary>Counts stock down while links are chosen. Links are taken in batches that share cables and split cages; a part of which a
/// batch needs two and one is left is bought once.</summary>
internal sealed class StockLedger
{
    private readonly Dictionary<(string Name, Length? Length), long> left = [];

    /// <summary>Starts with what is on hand.</summary>
    public StockLedger(ImmutableArray<StockItem> stock)
    {
        foreach (var item in stock)
        {
            var key = (item.Item.Name, item.Length);
            left[key] = left.GetValueOrDefault(key) + item.Quantity;
        }
    }

    /// <summary>Whether nothing is on hand at all.</summary>
    public bool IsEmpty => left.Count == 0;

    /// <summary>Price of one link of the next batch made this way, in hundredths, what is left in stock counted at nothing.</summary>
    public decimal PriceOf(Solution solution) => CostOf(solution, Batch(solution)) / Batch(solution);

    /// <summary>Price of a number of links made this way, in hundredths, what is left in stock counted at nothing.</summary>
    public decimal CostOf(Solution solution, int links) => Needs(solution, links).Sum(n =>
        Math.Max(0, n.Quantity - left.GetValueOrDefault(n.Key)) * n.UnitPrice.Hundredths);

    /// <summary>How many links a way can serve at the same price before a part it takes from stock runs out; no limit when it takes
    /// none.</summary>
    public int LinksServed(Solution solution)
    {
        var batch = Batch(solution);
        var most = (long)int.MaxValue;
        foreach (var (key, quantity, _) in Needs(solution, batch))
        {
            var have = left.GetValueOrDefault(key);
            if (have > 0) most = Math.Min(most, Math.Max(1, have / quantity) * batch);
        }
        return (int)most;
    }

    /// <summary>Takes the parts of a number of links, as far as they are there.</summary>
    public void Take(Solution solution, int links)
    {
        foreach (var (key, quantity, _) in Needs(solution, links))
            if (left.TryGetValue(key, out var have)) left[key] = Math.Max(0, have - quantity);
    }

    /// <summary>Links after which every part of the way is used up whole.</summary>
    private static int Batch(Solution solution) => solution.Parts.Select(p => p.SharedBy).DefaultIfEmpty(1).Max();

    /// <summary>What a number of links needs of each part; both ends of a link may need the same.</summary>
    private static IEnumerable<((string Name, Length? Length) Key, long Quantity, Money UnitPrice)> Needs(Solution solution, int links) =>
        from part in solution.Parts
        group part by (part.Item.Name, part.Length) into alike
        select (alike.Key, alike.Sum(p => ((long)links + p.SharedBy - 1) / p.SharedBy * p.Quantity), alike.First().UnitPrice);
}
