using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Notation;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Turns plan files into a plan. Every fault is a finding; what is left is bound.</summary>
public static class PlanBinder
{
    /// <summary>The plan, or null when its first file could not be read at all.</summary>
    /// <param name="files">The door to its files.</param>
    /// <param name="path">Its first file; null when the question is all there is.</param>
    /// <param name="findings">Where faults go.</param>
    /// <param name="question">A text in the plan language whose section <c>wanted</c> overrides the plan's, key by key.</param>
    public static Plan? Bind(PlanFiles files, string? path, FindingSink findings, SourceText? question = null) =>
        Bind(files, path, findings, question, new EarlierReadings());

    /// <summary>The same, with what was made before of texts that are still the same.</summary>
    internal static Plan? Bind(PlanFiles files, string? path, FindingSink findings, SourceText? question, EarlierReadings earlier)
    {
        var tree = PlanTree.Read(files, path, findings, question, earlier);
        if (tree.Main is null) return null;
        tree.Agree("currency");
        var tables = tree.Mentioned("standards");
        var standards = tables.IsEmpty ? StandardsLibrary.Shipped
            : earlier.Of("standards", null, tables, findings, () => StandardsLibrary.Load(tables, findings));
        var catalogues = tree.Mentioned("catalogue");
        var catalogue = earlier.Of("catalogue", standards, catalogues, findings, () => CatalogueOf(catalogues, standards, findings));
        if (catalogues.IsEmpty) HoldCurrency(tree.Main, findings);
        var places = new BuildingBinder(tree, standards, findings);
        var building = places.Bind();
        var devices = new DeviceBinder(tree, catalogue, building, places.IsInDoubt, findings).Bind();
        var trunks = new TrunkBinder(tree, catalogue, standards, building, devices, findings).Bind();
        var statements = new LinkBinder(tree, catalogue, standards, devices, trunks, findings).Bind();
        var demandBinder = new DemandBinder(tree, devices, statements, findings);
        var demands = demandBinder.Bind();
        var spans = new SpanBinder(tree, standards, building, findings).Bind();
        var lines = new LineBinder(tree, standards, building, spans, findings)
            {
                Ends = new LinkEndBinder(tree, catalogue, devices, findings), Devices = devices,
            }.Bind();
        var (links, linePorts) = new LinkExpander(devices, findings).Expand(statements, lines);
        var stock = StockBinder.Bind(tree, catalogue, findings);
        var policy = PolicyBinder.Bind(tree.Map("policy") ?? new MapNode(default, []), standards, catalogue, findings);
        var power = new PowerBinder(tree, building, places.IsInDoubt, findings).Bind();
        var name = FileName(path ?? "fabric");
        return new Plan
        {
            Name = tree.Text("name") ?? name,
            Title = tree.Text("title") ?? tree.Text("name") ?? name,
            Revision = tree.Text("revision") ?? "",
            Date = tree.Text("date") ?? "",
            Currency = tree.Text("currency") ?? PlanLanguage.ShippedCurrency,
            Standards = standards,
            Catalogue = catalogue,
            Policy = policy,
            Building = building,
            Devices = devices,
            Trunks = trunks,
            Statements = statements,
            Links = links,
            Demands = demands,
            DemandsLeftOut = demandBinder.LeftOut,
            DemandsInPart = demandBinder.InPart,
            Power = power,
            Spans = spans,
            Lines = lines,
            LinePorts = linePorts,
            Labels = LabelBinder.Bind(tree.Map("labels"), standards),
            Stock = stock,
            Wanted = new WantedBinder(tree, catalogue, standards, building, places.IsInDoubt, devices, findings)
                .Bind(stock, policy, power),
            CatalogueFiles = [.. catalogues.Select(c => c.Path)],
            StandardsFiles = [.. tables.Select(t => t.Path)],
            Sources = tree.Sources,
        };
    }

    /// <summary>Shipped prices have a unit of their own, and no other name makes them true.</summary>
    private static void HoldCurrency(MapNode main, FindingSink findings)
    {
        const string shipped = PlanLanguage.ShippedCurrency;
        if (main.Text("currency") is { } currency && currency != shipped)
            findings.Add(ModelFindings.CurrencyUnpriced, main.SpanOf("currency"),
                $"the shipped catalogue has placeholder prices in {shipped}, and calling them {currency} makes none of them true; state "
                + $"prices in {currency} in a catalogue of your own, or leave 'currency' out");
    }

    private static Catalogue CatalogueOf(ImmutableArray<SourceText> mentioned, StandardsLibrary standards, FindingSink findings)
    {
        var shipped = CatalogueBinder.ShippedUnder(standards, findings);
        if (mentioned.IsEmpty) return shipped;
        // A catalogue of the user's own states prices the user stands behind.
        var binder = new CatalogueBinder(standards, Mark.Seen, findings);
        var own = mentioned.SelectMany(binder.Read).ToList();
        foreach (var item in own.GroupBy(i => i.Name, StringComparer.Ordinal).SelectMany(g => g.Skip(1)))
            findings.Add(ModelFindings.NameTaken, item.Span,
                $"'{item.Name}' stands twice in the catalogues of the plan; keep one of the two");
        foreach (var item in own.Where(i => shipped.Find<ICatalogueItem>(i.Name) is { } other && other.GetType() != i.GetType()))
            findings.Add(ModelFindings.NameTaken, item.Span,
                $"'{item.Name}' is the name of another kind of part in the shipped catalogue; give it a name of its own");
        return shipped.With(own, binder.Faulty);
    }

    private static string FileName(string path)
    {
        var slash = path.LastIndexOf('/');
        var name = slash < 0 ? path : path[(slash + 1)..];
        var dot = name.LastIndexOf('.');
        return dot > 0 ? name[..dot] : name;
    }
}
