namespace Lanewright.Deliverables.Tables;

/// <summary>A column of a table.</summary>
/// <param name="Name">Its heading.</param>
/// <param name="Width">Its width in characters.</param>
/// <param name="Kind">How its cells are written.</param>
public sealed record Column(string Name, int Width, ColumnKind Kind = ColumnKind.Text);
