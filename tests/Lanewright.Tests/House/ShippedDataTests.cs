using Lanewright.Findings;
using Lanewright.Model.Binding;
using Lanewright.Notation;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Tests.House;

/// <summary>The tables that ship are free of findings, and every row says where it comes from.</summary>
public sealed class ShippedDataTests
{
    [Fact]
    public void Standards_ReadWithoutAFinding()
    {
        var findings = new FindingSink();
        StandardsLibrary.Load([], findings);
        FactTable.Read([EmbeddedText.Read("data/standards/module-codes.csv")], findings);
        Assert.Empty(findings.ToSorted().Select(f => f.Message));
    }

    [Fact]
    public void Catalogue_ReadsWithoutAFinding()
    {
        var findings = new FindingSink();
        var binder = new CatalogueBinder(StandardsLibrary.Shipped, Mark.Invented, findings);
        var items = EmbeddedText.Names("data/catalogue/").SelectMany(n => binder.Read(EmbeddedText.Read(n))).ToList();
        Assert.Empty(findings.ToSorted().Select(f => $"{f.Span.Path}:{f.Span.Position.Line} {f.Message}"));
        Assert.Equal(items.Count, items.Select(i => i.Name).Distinct().Count());
    }

    [Fact]
    public void Rows_HaveADocumentAndAMarkAndKnownReadingKeys()
    {
        var documents = StandardsLibrary.LoadDocuments();
        foreach (var name in EmbeddedText.Names("data/standards/").Where(n => !n.EndsWith("documents.csv", StringComparison.Ordinal)))
        {
            foreach (var row in CsvTree.Read(EmbeddedText.Read(name), new FindingSink()))
            {
                Assert.False(string.IsNullOrWhiteSpace(row.Text("document")), $"{name}:{row.Span.Position.Line} has no document");
                Assert.True(Marks.TryRead(row.Text("mark") ?? "", out var mark), $"{name}:{row.Span.Position.Line} has no mark");
                var keys = (row.Text("read-in") ?? "").Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
                var at = $"{name}:{row.Span.Position.Line}";
                Assert.All(keys, k => Assert.True(documents.ContainsKey(k), $"{at} was read in '{k}', which documents.csv does not list"));
                var saysWhere = keys.Length > 0 || name.Contains("module-codes", StringComparison.Ordinal);
                if (mark == Mark.Seen) Assert.True(saysWhere, $"{at} was seen, but not where");
            }
        }
    }
}
