using System.Collections.Immutable;
using Lanewright.Model;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Choice;

/// <summary>Counts stock down while links are chosen.</summary>
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

    /// <summary>Whether a part can be taken from stock.</summary>
    public bool Has(PartUse part) => left.GetValueOrDefault((part.Item.Name, part.Length)) >= part.Quantity;

    /// <summary>How many links a solution can serve before a part it takes from stock runs out; no limit when it takes none.</summary>
    public int LinksServed(Solution solution)
    {
        var most = int.MaxValue;
        foreach (var part in solution.Parts.Where(Has))
        {
            var links = left[(part.Item.Name, part.Length)] / part.Quantity * part.SharedBy;
            most = (int)Math.Min(most, links);
        }
        return most;
    }

    /// <summary>Takes the parts of a number of links, as far as they are there.</summary>
    public void Take(Solution solution, int links)
    {
        foreach (var part in solution.Parts.Where(Has))
        {
            var key = (part.Item.Name, part.Length);
            var used = ((long)links + part.SharedBy - 1) / part.SharedBy * part.Quantity;
            left[key] = Math.Max(0, left[key] - used);
        }
    }
}
