using Lanewright.Deliverables.Tables;

namespace Lanewright.Deliverables.Workbook;

/// <summary>The rows of a table one after another, with a look at whether another follows, so that a sheet is begun only for rows that
/// exist.</summary>
internal sealed class RowsLeft : IDisposable
{
    private readonly IEnumerator<Cell[]> rows;

    /// <summary>Begins before the first row.</summary>
    public RowsLeft(TableView table)
    {
        rows = table.Rows().GetEnumerator();
        HasMore = rows.MoveNext();
    }

    /// <summary>Whether another row follows.</summary>
    public bool HasMore { get; private set; }

    /// <summary>The next row, good until the one after it is asked for; null at the end.</summary>
    public Cell[]? Next()
    {
        if (!HasMore) return null;
        // The table may use its array again, so the row is copied before the look ahead.
        var row = (Cell[])rows.Current.Clone();
        HasMore = rows.MoveNext();
        return row;
    }

    /// <inheritdoc/>
    public void Dispose() => rows.Dispose();
}
