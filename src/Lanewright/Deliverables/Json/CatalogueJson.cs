using System.Text.Json;
using Lanewright.Model.Catalogues;
using Lanewright.Text;

namespace Lanewright.Deliverables.Json;

/// <summary>Catalogue items as JSON.</summary>
public static class CatalogueJson
{
    /// <summary>Writes items, each whole.</summary>
    public static void Write(IEnumerable<ICatalogueItem> items, string currency, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("currency", currency);
        writer.WriteStartArray("items");
        foreach (var item in items) Write(writer, item);
        writer.WriteEndArray();
        writer.WriteEndObject();
    });

    private static void Write(Utf8JsonWriter writer, ICatalogueItem item)
    {
        writer.WriteStartObject();
        writer.WriteString("model", item.Name);
        writer.WriteString("kind", PartsView.KindOf(item));
        writer.WriteString("title", item.Title);
        writer.Number("price", (double)item.Price.Units);
        writer.WriteString("priceMark", Marks.Name(item.PriceMark));
        Words(writer, "rates", CatalogueSheet.Rates(item).Select(r => r.ToString()));
        Words(writer, "formFactors", CatalogueSheet.FormFactors(item));
        writer.WriteStartArray("values");
        foreach (var (key, value) in CatalogueSheet.Of(item))
        {
            writer.WriteStartObject();
            writer.WriteString("key", key);
            writer.WriteString("value", value);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void Words(Utf8JsonWriter writer, string name, IEnumerable<string> words)
    {
        writer.WriteStartArray(name);
        foreach (var word in words) writer.WriteStringValue(word);
        writer.WriteEndArray();
    }
}
