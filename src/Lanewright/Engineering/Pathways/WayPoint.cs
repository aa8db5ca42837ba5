namespace Lanewright.Engineering.Pathways;

/// <summary>A point of a hall in metres: along the rows, across them, and above the floor.</summary>
/// <param name="X">Along the rows.</param>
/// <param name="Y">Across the rows.</param>
/// <param name="Z">Above the floor.</param>
public readonly record struct WayPoint(double X, double Y, double Z = 0)
{
    /// <summary>Metres to another point as the crow flies.</summary>
    public double To(WayPoint other) => Math.Sqrt(Square(X - other.X) + Square(Y - other.Y) + Square(Z - other.Z));

    /// <summary>Metres to the place above or below another point as the crow flies.</summary>
    public double FlatTo(WayPoint other) => Math.Sqrt(Square(X - other.X) + Square(Y - other.Y));

    /// <summary>Metres to the place above or below another point along the rows and across them.</summary>
    public double Across(WayPoint other) => Math.Abs(X - other.X) + Math.Abs(Y - other.Y);

    private static double Square(double value) => value * value;
}
