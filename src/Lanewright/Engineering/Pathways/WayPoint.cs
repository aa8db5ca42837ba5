namespace Lanewright.Engineering.Pathways;

/// <summary>A point of a hall in metres: along the rows and across them.</summary>
/// <param name="X">Along the rows.</param>
/// <param name="Y">Across the rows.</param>
public readonly record struct WayPoint(double X, double Y)
{
    /// <summary>Metres to another point as the crow flies.</summary>
    public double To(WayPoint other) => Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));

    /// <summary>Metres to another point along the rows and across them.</summary>
    public double Across(WayPoint other) => Math.Abs(X - other.X) + Math.Abs(Y - other.Y);
}
