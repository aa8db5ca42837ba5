using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Standards;

/// <summary>One or several tables of rows, grouped by subject in table order.</summary>
public sealed class FactTable
{
    private static readonly MapShape RowShape = new("a row of standards values",
    [
        Required("subject", "the thing the value belongs to"),
        Required("field", "which of its values"),
        Required("value", "the value"),
        new("unit", Shapes.Text, "its unit"),
        new("document", Shapes.Text, "the standard or page that sets it"),
        new("clause", Shapes.Text, "clause or table"),
        new("edition", Shapes.Text, "edition or year"),
        new("mark", Shapes.Text, "how well it is known"),
        new("read-in", Shapes.Text, "keys of the texts it was read in"),
        new("note", Shapes.Text, "what to know beside it"),
    ]);

    private readonly Dictionary<string, FactSheet> sheets;

    private FactTable(IEnumerable<FactSheet> sheets)
    {
        Sheets = [.. sheets];
        this.sheets = Sheets.ToDictionary(s => s.Subject, StringComparer.Ordinal);
    }

    /// <summary>The subjects with their rows.</summary>
    public ImmutableArray<FactSheet> Sheets { get; }

    /// <summary>One subject, or null.</summary>
    public FactSheet? this[string subject] => sheets.GetValueOrDefault(subject);

    /// <summary>Reads tables; rows of a later table replace those of an earlier one, value by value.</summary>
    public static FactTable Read(IEnumerable<SourceText> tables, FindingSink findings)
    {
        var bySubject = new Dictionary<string, List<Fact>>(StringComparer.Ordinal);
        var order = new List<string>();
        FieldUnits? units = null;
        foreach (var table in tables)
        {
            var isReplacement = units is not null;
            units ??= new FieldUnits();
            var seen = new HashSet<(string, string)>();
            foreach (var row in CsvTree.Read(table, findings))
            {
                if (ReadRow(row, findings) is not { } fact) continue;
                if (!isReplacement) units.Learn(fact);
                else if (!units.CheckField(fact, row, findings) || !units.Check(fact, row, findings)) continue;
                if (!seen.Add((fact.Subject, fact.Field)))
                    findings.Add(StandardsFindings.ValueRepeated, fact.Span,
                        $"'{fact.Field}' of {fact.Subject} stands twice in this table; keep one row");
                if (!bySubject.TryGetValue(fact.Subject, out var facts))
                {
                    bySubject[fact.Subject] = facts = [];
                    order.Add(fact.Subject);
                }
                facts.Add(fact);
            }
        }
        return new FactTable(order.Select(s => new FactSheet(s, bySubject[s])));
    }

    private static Fact? ReadRow(MapNode row, FindingSink findings)
    {
        var before = findings.ErrorCount;
        ShapeCheck.Check(row, RowShape, findings);
        if (findings.ErrorCount > before) return null;
        if (row.Text("subject") is not { } subject || row.Text("field") is not { } field) return null;
        if (row.Text("value") is not { } value) return null;
        if (row.Text("document") is not { } document)
        {
            findings.Add(StandardsFindings.SourceMissing, row.Span,
                "this row names no document; write who sets the value, be it a house rule");
            return null;
        }
        if (!Marks.TryRead(row.Text("mark") ?? "", out var mark))
        {
            findings.Add(StandardsFindings.SourceMissing, row.SpanOf("mark"),
                (row.Text("mark") is { } text ? $"'{text}' is no mark" : "this row has no mark")
                + "; write seen, derived, memory, weak, common practice or invented");
            return null;
        }
        var source = new Citation(document, row.Text("clause") ?? "", row.Text("edition") ?? "", mark,
            row.Text("read-in") ?? "", row.Text("note") ?? "");
        var unit = row.Text("unit") ?? "";
        // Wavelengths are windows; every other value with a unit is one number.
        if (unit.Length > 0 && unit != "nm" && !Numerals.TryReal(value, out _))
        {
            findings.Add(StandardsFindings.LimitUnreadable, row.SpanOf("value"),
                $"'{value}' is no number; a value in {unit} is written as a plain number");
            return null;
        }
        return new Fact(subject, field, value, unit, source, row.Span);
    }

    private static KeyShape Required(string name, string meaning) => new(name, Shapes.Text, meaning) { IsRequired = true };
}
