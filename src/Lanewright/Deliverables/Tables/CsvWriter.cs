using System.Text;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Tables;

/// <summary>Writes a table as CSV: commas, double quotes where needed, one line feed a row.</summary>
public static class CsvWriter
{
    /// <summary>Writes a table with its header.</summary>
    public static void Write(TableView table, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), 1 << 16, leaveOpen: true);
        writer.NewLine = "\n";
        writer.WriteLine(string.Join(',', table.Columns.Select(c => c.Name)));
        foreach (var row in table.Rows())
        {
            for (var i = 0; i < row.Length; i++)
            {
                if (i > 0) writer.Write(',');
                Write(writer, row[i], table.Columns[i].Kind);
            }
            writer.Write('\n');
        }
    }

    private static void Write(StreamWriter writer, Cell cell, ColumnKind kind)
    {
        if (cell.IsNumber)
        {
            writer.Write(kind == ColumnKind.Money ? Numerals.Fixed(cell.Number, 2) : Numerals.Plain(cell.Number));
            return;
        }
        var text = Harmless.Text(cell.Text);
        if (text.AsSpan().IndexOfAny(",\"\r\n") < 0)
        {
            writer.Write(text);
            return;
        }
        writer.Write('"');
        writer.Write(text.Replace("\"", "\"\"", StringComparison.Ordinal));
        writer.Write('"');
    }
}
