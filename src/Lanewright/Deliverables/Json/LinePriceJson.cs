using System.Text.Json;
using Lanewright.Engineering.Lines;
using Lanewright.Text;

namespace Lanewright.Deliverables.Json;

/// <summary>What a line costs, as JSON: null where a price is not known, and never nothing for it.</summary>
internal static class LinePriceJson
{
    /// <summary>Writes the price of a design with its parts into an object that is open.</summary>
    public static void Write(Utf8JsonWriter writer, LinePrice? price, string currency)
    {
        Total(writer, price);
        writer.WriteString("currency", currency);
        writer.WriteString("priceMark", price is null || !price.Unpriced.IsEmpty ? LinePriceWords.Unknown : Marks.Name(price.Mark));
        writer.WriteStartArray("parts");
        foreach (var part in price?.Parts ?? [])
        {
            writer.WriteStartObject();
            writer.WriteString("part", part.Item.Name);
            writer.WriteString("title", part.Item.Title);
            writer.WriteNumber("count", part.Count);
            writer.Number("unitPrice", (double?)part.Each?.Units);
            writer.Number("price", (double?)part.Together?.Units);
            writer.WriteString("priceMark", LinePriceWords.MarkOf(part));
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    /// <summary>Writes the price of all parts, and the names of those without one.</summary>
    public static void Total(Utf8JsonWriter writer, LinePrice? price)
    {
        writer.Number("price", (double?)price?.Total?.Units);
        writer.WriteStartArray("unpriced");
        foreach (var name in price?.Unpriced ?? []) writer.WriteStringValue(name);
        writer.WriteEndArray();
    }
}
