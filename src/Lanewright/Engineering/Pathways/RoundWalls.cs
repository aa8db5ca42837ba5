namespace Lanewright.Engineering.Pathways;

/// <summary>The wall of a round duct.</summary>
/// <param name="inside">Its inside radius.</param>
internal sealed class RoundWalls(double inside) : ISectionWalls
{
    /// <inheritdoc/>
    public IEnumerable<(double X, double Y)> First(double radius) => [(inside, radius)];

    /// <inheritdoc/>
    public IEnumerable<(double X, double Y)> Beside((double X, double Y, double R) circle, double radius) =>
        SectionPacking.Crossing((inside, inside), inside - radius, (circle.X, circle.Y), circle.R + radius);

    /// <inheritdoc/>
    public bool Holds((double X, double Y) place, double radius)
    {
        var (x, y, room) = (place.X - inside, place.Y - inside, inside - radius + SectionPacking.Rounding);
        return room >= 0 && (x * x) + (y * y) <= room * room;
    }
}
