using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model;

/// <summary>Equipment on hand, used first and priced at nothing.</summary>
/// <param name="Item">What it is.</param>
/// <param name="Quantity">How many.</param>
/// <param name="Length">For a cable, its length.</param>
/// <param name="Span">Where the plan says so.</param>
public sealed record StockItem(ICatalogueItem Item, long Quantity, Length? Length, SourceSpan Span);
