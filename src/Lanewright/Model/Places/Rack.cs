using Lanewright.Quantities;

namespace Lanewright.Model.Places;

/// <summary>One rack in its row.</summary>
/// <param name="Index">Its number in the plan.</param>
/// <param name="Hall">The hall it stands in.</param>
/// <param name="Row">The name of its row.</param>
/// <param name="Number">Its number in the row, from 1.</param>
/// <param name="X">Its middle along the row.</param>
/// <param name="Y">Its side of the smaller distance across the hall, where cables come down.</param>
/// <param name="Type">What kind it is.</param>
public sealed record Rack(int Index, Hall Hall, string Row, int Number, Length X, Length Y, RackType Type)
{
    /// <summary>On which side of the row the fronts of its devices are; null when not said.</summary>
    public RowSide? Fronts { get; init; }

    /// <summary>Hall, row and number, such as <c>compute/A/07</c>.</summary>
    public string Name => $"{Hall.PlainName}/{Row}/{Numerals.Padded(Number, 2)}";
}
