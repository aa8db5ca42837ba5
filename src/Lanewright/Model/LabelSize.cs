using Lanewright.Quantities;

namespace Lanewright.Model;

/// <summary>The labels that cable ends get.</summary>
/// <param name="Width">Width of one.</param>
/// <param name="Height">Height of one.</param>
/// <param name="Columns">How many stand side by side on a sheet.</param>
public sealed record LabelSize(Length Width, Length Height, int Columns)
{
    /// <summary>Three columns on a sheet of A4.</summary>
    public static LabelSize Usual { get; } = new(Length.FromMillimetres(60), Length.FromMillimetres(18), 3);
}
