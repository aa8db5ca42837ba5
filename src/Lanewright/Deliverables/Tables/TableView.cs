using System.Collections.Immutable;

namespace Lanewright.Deliverables.Tables;

/// <summary>A table that can be walked row by row, once for each writer.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Gives its rows; the array given may be used again for the next row.</param>
public sealed record TableView(string Name, ImmutableArray<Column> Columns, Func<IEnumerable<Cell[]>> Rows);
