using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Notation;

namespace Lanewright.Model.Binding;

/// <summary>Turns stock lines, in the plan and in tables, into stock.</summary>
internal static class StockBinder
{
    /// <summary>All stock, in natural order of the models, longest cables last.</summary>
    public static ImmutableArray<StockItem> Bind(PlanTree tree, Catalogue catalogue, FindingSink findings)
    {
        var lines = tree.Items("stock").ToList();
        foreach (var table in tree.Mentioned("stock-files"))
        {
            foreach (var row in CsvTree.Read(table, findings))
            {
                if (ShapeCheck.Check(row, PlanLanguage.Stock, findings) is MapNode line) lines.Add(line);
            }
        }
        var stock = new List<StockItem>();
        foreach (var line in lines)
        {
            if (line.Text("model") is not { } name || line.Whole("quantity") is not { } quantity) continue;
            var item = Names.Item<ICatalogueItem>(catalogue, "catalogue item", name, line.SpanOf("model"), findings);
            if (item is null) continue;
            if (item is CableItem && line.Length("length") is null)
            {
                findings.Add(NotationFindings.KeyMissing, line.Span,
                    $"'length' is missing: {name} is a cable, and stock of it has a length");
                continue;
            }
            stock.Add(new StockItem(item, quantity, line.Length("length"), line.Span));
        }
        return [.. stock.OrderBy(s => s.Item.Name, Text.NaturalOrder.Instance).ThenBy(s => s.Length ?? default)];
    }
}
