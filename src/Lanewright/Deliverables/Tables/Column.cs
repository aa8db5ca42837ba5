namespace Lanewright.Deliverables.Tables;

/// <summary>A column of a table.</summary>
/// <param name="Name">Its heading.</param>
/// <param name="Width">Its width in characters.</param>
/// <param name="Kind">How its cells are written.</param>
/// <param name="IsSummed">Whether a row of totals adds it up, where a document has one.</param>
public sealed record Column(string Name, int Width, ColumnKind Kind = ColumnKind.Text, bool IsSummed = false);
