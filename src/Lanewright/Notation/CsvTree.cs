using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Text;
using nietras.SeparatedValues;

namespace Lanewright.Notation;

/// <summary>Reads a table with a header line. Each row becomes a map whose keys are the header's cells; empty cells are left out,
/// so a table row and a YAML map are read by the same rules.</summary>
public static class CsvTree
{
    /// <summary>The rows that could be read.</summary>
    public static ImmutableArray<MapNode> Read(SourceText source, FindingSink findings)
    {
        if (source.Content.Length > TreeBounds.MostCharacters)
        {
            findings.Add(NotationFindings.TextOutOfBounds, source.Span(0, 0),
                $"the file has more than {TreeBounds.MostCharacters / (1024 * 1024)} million characters; split it into several");
            return [];
        }
        if (source.Content.AsSpan().Trim().IsEmpty) return [];
        try
        {
            return ReadRows(source, findings);
        }
        catch (Exception fault) when (fault is InvalidDataException or NotSupportedException)
        {
            findings.Add(NotationFindings.SyntaxFault, source.Span(0, 1), "the table is not well-formed: " + fault.Message);
            return [];
        }
    }

    private static ImmutableArray<MapNode> ReadRows(SourceText source, FindingSink findings)
    {
        // Quotes are taken off by hand below: places must be those of the file.
        using var reader = Sep.New(',').Reader(o => o with { HasHeader = false, DisableColCountCheck = true, Unescape = false })
            .FromText(source.Content);
        ImmutableArray<ScalarNode> header = [];
        var rows = ImmutableArray.CreateBuilder<MapNode>();
        foreach (var row in reader)
        {
            var start = source.StartOfLine(row.LineNumberFrom);
            if (row.Span.Trim().IsEmpty) continue;
            var cells = CellsOf(source, row, start, findings);
            if (header.IsEmpty)
            {
                header = WithoutRepeated(cells, findings);
                continue;
            }
            if (cells.Length != header.Length)
            {
                findings.Add(NotationFindings.RowRagged, source.Span(start, row.Span.Length),
                    $"this row has {cells.Length} cells and the header {header.Length}; put text that holds a comma into double quotes");
                continue;
            }
            rows.Add(RowOf(source, start, row.Span.Length, header, cells));
        }
        return rows.ToImmutable();
    }

    private static ImmutableArray<ScalarNode> CellsOf(SourceText source, SepReader.Row row, int start, FindingSink findings)
    {
        var cells = ImmutableArray.CreateBuilder<ScalarNode>(row.ColCount);
        for (var i = 0; i < row.ColCount; i++)
        {
            var raw = row[i].Span;
            row.Span.Overlaps(raw, out var offset);
            var trimmed = raw.Trim();
            var value = trimmed is ['"', .., '"'] && trimmed.Length >= 2
                ? trimmed[1..^1].ToString().Replace("\"\"", "\"", StringComparison.Ordinal)
                : trimmed.ToString();
            cells.Add(Characters.Checked(new ScalarNode(source.Span(start + offset, raw.Length), value, value.Length == 0), findings));
        }
        return cells.ToImmutable();
    }

    private static ImmutableArray<ScalarNode> WithoutRepeated(ImmutableArray<ScalarNode> header, FindingSink findings)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var cell in header.Where(c => !c.IsEmpty && !names.Add(c.Value)))
            findings.Add(NotationFindings.KeyRepeated, cell.Span, $"the header names '{cell.Value}' twice; keep one of the two");
        return header;
    }

    private static MapNode RowOf(
        SourceText source, int start, int length, ImmutableArray<ScalarNode> header, ImmutableArray<ScalarNode> cells)
    {
        var entries = ImmutableArray.CreateBuilder<MapEntry>(cells.Length);
        for (var i = 0; i < cells.Length; i++)
            if (!cells[i].IsEmpty && !header[i].IsEmpty) entries.Add(new MapEntry(header[i], cells[i]));
        return new MapNode(source.Span(start, length), entries.ToImmutable());
    }
}
