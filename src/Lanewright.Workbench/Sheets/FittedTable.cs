using System.Collections.Immutable;
using Lanewright.Deliverables.Tables;
using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>Tables of the documents as they fit a sheet: a sheet is not as wide as a workbook.</summary>
internal static class FittedTable
{
    /// <summary>The table without columns in which nothing stands.</summary>
    /// <param name="view">The table.</param>
    /// <param name="sparse">Columns in which a nought says nothing either.</param>
    public static TableView Filled(TableView view, params ImmutableArray<string> sparse)
    {
        var rows = view.Rows().Select(r => r.ToArray()).ToList();
        bool IsSparse(int column) => sparse.Contains(view.Columns[column].Name);
        bool Says(Cell cell, int column) => cell.IsNumber ? cell.Number != 0 || !IsSparse(column) : cell.Text.Length > 0;
        var kept = Enumerable.Range(0, view.Columns.Length)
            .Where(c => rows.Count == 0 || rows.Any(r => c < r.Length && Says(r[c], c))).ToList();
        return view with
        {
            Columns = [.. kept.Select(c => view.Columns[c])],
            Rows = () => rows.Select(r => kept.Select(c => c < r.Length && Says(r[c], c) ? r[c] : Cell.Empty).ToArray()),
        };
    }

    /// <summary>Some of its columns.</summary>
    public static TableView Only(TableView view, params ImmutableArray<string> columns)
    {
        var kept = Enumerable.Range(0, view.Columns.Length).Where(c => columns.Contains(view.Columns[c].Name)).ToList();
        return view with
        {
            Columns = [.. kept.Select(c => view.Columns[c])],
            Rows = () => view.Rows().Select(r => kept.Select(c => c < r.Length ? r[c] : Cell.Empty).ToArray()),
        };
    }

    /// <summary>The table with columns that belong together as one, at the place of the first; those it does not have are left
    /// out.</summary>
    /// <param name="view">The table.</param>
    /// <param name="name">The name of the one column.</param>
    /// <param name="between">What stands between two values.</param>
    /// <param name="columns">The columns.</param>
    public static TableView Joined(TableView view, string name, string between, params ImmutableArray<string> columns)
    {
        var parts = Enumerable.Range(0, view.Columns.Length).Where(c => columns.Contains(view.Columns[c].Name)).ToList();
        if (parts.Count < 2) return view;
        var others = Enumerable.Range(0, view.Columns.Length).Where(c => c == parts[0] || !parts.Contains(c)).ToList();
        var joined = new Column(name, parts.Sum(c => view.Columns[c].Width));
        return view with
        {
            Columns = [.. others.Select(c => c == parts[0] ? joined : view.Columns[c])],
            Rows = () => view.Rows().Select(r => others.Select(c => c == parts[0] ? Words(r) : r[c]).ToArray()),
        };

        Cell Words(Cell[] row) => string.Join(between, parts.Select(c => row[c])
            .Select(c => c.IsNumber ? Numerals.Plain(Math.Round(c.Number, 2)) : c.Text).Where(w => w.Length > 0));
    }
}
