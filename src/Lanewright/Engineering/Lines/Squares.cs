namespace Lanewright.Engineering.Lines;

/// <summary>Squares, which root sums and powers of lines are full of.</summary>
internal static class Squares
{
    /// <summary>A number times itself.</summary>
    public static double Of(double value) => value * value;
}
