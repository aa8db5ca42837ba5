using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Engineering.Lines;

/// <summary>What the parts of a design cost: modules, multiplexers, amplifiers and pads of both directions. Fibre, cords and work are not
/// in it. What nobody states a price of is unknown, and never nothing.</summary>
/// <param name="Parts">The parts.</param>
public sealed record LinePrice(ImmutableArray<LinePart> Parts)
{
    /// <summary>Price of those whose price is known.</summary>
    public Money Known => Parts.Aggregate(Money.Zero, (sum, part) => sum + (part.Together ?? Money.Zero));

    /// <summary>Parts without a price, by name.</summary>
    public ImmutableArray<string> Unpriced => [.. Parts.Where(p => p.Each is null).Select(p => p.Item.Name)];

    /// <summary>Price of all; null where one of them has none.</summary>
    public Money? Total => Parts.All(p => p.Each is not null) ? Known : null;

    /// <summary>The weakest mark of the prices that are known.</summary>
    public Mark Mark => Parts.Where(p => p.Each is not null).Select(p => p.Item.PriceMark).Aggregate(Mark.Seen, Marks.Weaker);

    /// <summary>The price of a design; null for one that is not built.</summary>
    /// <param name="catalogue">What can be bought.</param>
    /// <param name="design">The design.</param>
    /// <param name="terminals">The modules that are chosen; null for the cheapest of the type.</param>
    public static LinePrice? Of(Catalogue catalogue, LineDesign design, LineTerminals? terminals = null) =>
        design.TypeName.Length == 0 || !design.IsBuilt
        ? null
        : new LinePrice([.. LineParts.Of(catalogue, design, design.Channels.Length, terminals).Select(p =>
            new LinePart(p.Part, p.Count, IsStated(catalogue, p.Part) ? p.Part.Price : null))]);

    private static bool IsStated(Catalogue catalogue, ICatalogueItem part) =>
        catalogue.Find<ICatalogueItem>(part.Name) is not null && part.Price > Money.Zero;
}
