using Lanewright.Engineering.Lines;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Deliverables;

/// <summary>What the parts of a line cost, in words.</summary>
public static class LinePriceWords
{
    /// <summary>What stands where a price is not known.</summary>
    public const string Unknown = "not known";

    /// <summary>The price of a scheme in a table: <c>not built</c> where there is nothing to price.</summary>
    public static string Short(LinePrice? price) =>
        price is null ? "not built" : price.Total is { } total ? Numerals.Grouped(total.Units) : Unknown;

    /// <summary>The price of a design in a sentence, with what is missing from it; empty where there is nothing to build.</summary>
    /// <param name="price">The price.</param>
    /// <param name="currency">Its unit.</param>
    public static string Whole(LinePrice? price, string currency)
    {
        if (price is null) return "";
        const string without = "fibre, cords and work not counted";
        if (price.Unpriced.IsEmpty)
            return $"parts of both ends and all between: {Numerals.Grouped(price.Known.Units)} {currency} "
                + $"[{Marks.Name(price.Mark)}], {without}";
        return $"price not known: nobody states one of {string.Join(", ", price.Unpriced)}; the other parts come to "
            + $"{Numerals.Grouped(price.Known.Units)} {currency}, {without}";
    }

    /// <summary>How well the price of a part is known.</summary>
    public static string MarkOf(LinePart part) => part.Each is null ? Unknown : Marks.Name(part.Item.PriceMark);
}
