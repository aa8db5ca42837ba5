using Lanewright.Quantities;

namespace Lanewright.Model.Places;

/// <summary>One rack in its row.</summary>
/// <param name="Index">Its number in the plan.</param>
/// <param name="Hall">The hall it stands in.</param>
/// <param name="Row">The name of its row.</param>
/// <param name="Number">Its number in the row, from 1.</param>
/// <param name="X">Its middle along the row.</param>
/// <param name="Y">Its front across the rows.</param>
/// <param name="Type">What kind it is.</param>
public sealed record Rack(int Index, Hall Hall, string Row, int Number, Length X, Length Y, RackType Type)
{
    /// <summary>Hall, row and number, such as <c>compute/A/07</c>.</summary>
    public string Name => $"{Hall.PlainName}/{Row}/{Numerals.Padded(Number, 2)}";
}
