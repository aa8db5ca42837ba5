namespace Lanewright.Engineering.Pathways;

/// <summary>A floor and two walls, open above.</summary>
/// <param name="width">Between the walls.</param>
internal sealed class BoxWalls(double width) : ISectionWalls
{
    /// <inheritdoc/>
    public IEnumerable<(double X, double Y)> First(double radius) => [(radius, radius), (width - radius, radius)];

    /// <inheritdoc/>
    public IEnumerable<(double X, double Y)> Beside((double X, double Y, double R) circle, double radius)
    {
        var (x, y, r) = circle;
        var reach = r + radius;
        var beside = Math.Sqrt(Math.Max(0, (reach * reach) - ((y - radius) * (y - radius))));
        yield return (x - beside, radius);
        yield return (x + beside, radius);
        foreach (var wall in new[] { radius, width - radius })
            if (Math.Abs(wall - x) <= reach) yield return (wall, y + Math.Sqrt((reach * reach) - ((wall - x) * (wall - x))));
    }

    /// <inheritdoc/>
    public bool Holds((double X, double Y) place, double radius) => place.X >= radius - SectionPacking.Rounding
        && place.X <= width - radius + SectionPacking.Rounding && place.Y >= radius - SectionPacking.Rounding;
}
