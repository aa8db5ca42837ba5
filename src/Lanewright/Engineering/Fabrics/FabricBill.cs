using System.Collections.Immutable;
using Lanewright.Engineering.Cost;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What a fabric takes, by item and length, and what of it is to be bought.</summary>
/// <param name="spares">Spares wanted, as a part of what is in use.</param>
/// <param name="free">What exists already.</param>
/// <param name="isPart">Whether this is one part of a fabric of several: its spares are then counted in fractions, as rounding up is done
/// once for all parts.</param>
internal sealed class FabricBill(Share spares, FreeItems free, bool isPart = false)
{
    private readonly Dictionary<(string Name, Length? Length), (ICatalogueItem Item, long Count)> counts = [];

    /// <summary>Adds so many of an item.</summary>
    public void Add(ICatalogueItem item, Length? length, long count)
    {
        if (count == 0) return;
        var key = (item.Name, length);
        counts[key] = (item, counts.GetValueOrDefault(key).Count + count);
    }

    /// <summary>Adds what a set of links takes.</summary>
    public void Add(LinkTally tally)
    {
        foreach (var line in tally.Lines)
        {
            var solution = line.Solution;
            if (solution.FromModule is { } from) Add(from, null, line.FromCages);
            if (solution.ToModule is { } to) Add(to, null, line.ToCages);
            Add(solution.Cable, solution.Length, line.Cables);
            if (solution.Attenuator is { } attenuator)
                Add(attenuator, null, line.Links * solution.Parts.Where(p => ReferenceEquals(p.Item, attenuator)).Sum(p => p.Quantity));
        }
    }

    /// <summary>The parts of a kind, in natural order of their names, then by length.</summary>
    public ImmutableArray<FabricPart> Parts<T>()
        where T : ICatalogueItem =>
    [
        .. counts
            .Where(c => c.Value.Item is T)
            .OrderBy(c => c.Key.Name, NaturalOrder.Instance)
            .ThenBy(c => c.Key.Length ?? default)
            .Select(c => Part(c.Value.Item, c.Key.Length, c.Value.Count)),
    ];

    /// <summary>What buying it costs.</summary>
    /// <param name="energy">What energy costs beside.</param>
    public FabricCost Cost(Money energy)
    {
        var (switches, modules, cables, small) = (Money.Zero, Money.Zero, Money.Zero, Money.Zero);
        foreach (var ((_, length), (item, count)) in counts)
        {
            var part = Part(item, length, count);
            var price = isPart ? PriceAsPart(part) : part.UnitPrice * part.ToBuy;
            switch (item)
            {
                case ModuleModel: modules += price; break;
                case CableItem: cables += price; break;
                case SundryModel: small += price; break;
                default: switches += price; break;
            }
        }
        return new FabricCost(switches, modules, cables, small, energy);
    }

    private Money PriceAsPart(FabricPart part)
    {
        var wanted = part.Count * (decimal)SpareParts.ShareOf(part.Item, part.Length, spares).Value;
        return Money.FromHundredths(Math.Floor(part.UnitPrice.Hundredths * Math.Max(0, part.Count + wanted - free.CountOf(part.Item))));
    }

    private FabricPart Part(ICatalogueItem item, Length? length, long count)
    {
        var wanted = count + SpareParts.For(item, length, count, spares);
        var price = item is CableItem cable && length is { } metres ? cable.PriceOf(metres) : item.Price;
        return new FabricPart(item, length, count, Math.Max(0, wanted - free.CountOf(item)), price);
    }
}
