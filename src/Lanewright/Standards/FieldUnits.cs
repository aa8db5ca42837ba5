using Lanewright.Findings;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Standards;

/// <summary>The units the shipped rows of a table are kept in: a replacement in another unit would be read a thousand times too
/// large or small.</summary>
internal sealed class FieldUnits
{
    private readonly Dictionary<(string Subject, string Field), string> ofValue = [];
    private readonly Dictionary<string, HashSet<string>> ofField = new(StringComparer.Ordinal);

    /// <summary>Takes note of a shipped row.</summary>
    public void Learn(Fact fact)
    {
        ofValue[(fact.Subject, fact.Field)] = fact.Unit;
        Learn(fact.Field, fact.Unit);
        if (StemOf(fact.Field) is { } stem) Learn(stem, fact.Unit);
    }

    private void Learn(string field, string unit)
    {
        if (!ofField.TryGetValue(field, out var units)) ofField[field] = units = new(StringComparer.Ordinal);
        units.Add(unit);
    }

    /// <summary>A penalty's field without its boundary: such tables may be told finer than they are shipped. Null for other
    /// fields.</summary>
    private static string? StemOf(string field)
    {
        const string before = "-penalty@";
        var at = field.IndexOf(before, StringComparison.Ordinal);
        return at > 0 && Numerals.TryReal(field.AsSpan(at + before.Length), out _) ? field[..(at + before.Length)] : null;
    }

    private string KnownAs(string field) => ofField.ContainsKey(field) ? field : StemOf(field) ?? field;

    /// <summary>Whether a row names a field the table has; one that has not would be read by nobody, and is reported.</summary>
    public bool CheckField(Fact fact, MapNode row, FindingSink findings)
    {
        if (ofField.ContainsKey(KnownAs(fact.Field))) return true;
        findings.Add(StandardsFindings.LimitUnreadable, row.SpanOf("field"),
            $"no row of this table has a field '{fact.Field}', so nothing would read it{Spelling.DidYouMean(fact.Field, ofField.Keys)}");
        return false;
    }

    /// <summary>Whether a row has the unit of the row it replaces, or of the same field elsewhere; one that has not is
    /// reported.</summary>
    public bool Check(Fact fact, MapNode row, FindingSink findings)
    {
        if (ofValue.TryGetValue((fact.Subject, fact.Field), out var own)
            ? own == fact.Unit
            : !ofField.TryGetValue(KnownAs(fact.Field), out var units) || units.Contains(fact.Unit))
        {
            return true;
        }
        var kept = own ?? string.Join(" or ", ofField[KnownAs(fact.Field)].Order(StringComparer.Ordinal));
        findings.Add(StandardsFindings.LimitUnreadable, row.SpanOf("unit"),
            $"'{fact.Field}' of {fact.Subject} is given {In(fact.Unit)} and is kept {In(kept)}; write it {In(kept)}");
        return false;
    }

    private static string In(string unit) => unit.Length == 0 ? "without a unit" : "in " + unit;
}
