namespace Lanewright.Engineering.Pathways;

/// <summary>Circles that lie in a section, found by where they are.</summary>
/// <param name="largest">Radius of the largest that will be added.</param>
internal sealed class PlacedCircles(double largest)
{
    private readonly List<(double X, double Y, double R)> all = [];
    private readonly Dictionary<(int X, int Y), List<(double X, double Y, double R)>> cells = [];

    /// <summary>All of them, in the order they were added.</summary>
    public IReadOnlyList<(double X, double Y, double R)> All => all;

    /// <summary>Adds one.</summary>
    public void Add((double X, double Y, double R) circle)
    {
        all.Add(circle);
        var key = CellOf(circle.X, circle.Y);
        if (!cells.TryGetValue(key, out var cell)) cells[key] = cell = [];
        cell.Add(circle);
    }

    /// <summary>All that a further circle in a place may touch, and some more.</summary>
    public IEnumerable<(double X, double Y, double R)> Near(double x, double y) => Within(x, y, 1);

    /// <summary>All that a further circle may touch together with one in a place, and some more.</summary>
    public IEnumerable<(double X, double Y, double R)> Around(double x, double y) => Within(x, y, 2);

    private IEnumerable<(double X, double Y, double R)> Within(double x, double y, int reach)
    {
        var (column, row) = CellOf(x, y);
        for (var i = column - reach; i <= column + reach; i++)
            for (var j = row - reach; j <= row + reach; j++)
                if (cells.TryGetValue((i, j), out var cell))
                    foreach (var circle in cell) yield return circle;
    }

    private (int X, int Y) CellOf(double x, double y) => ((int)Math.Floor(x / (2 * largest)), (int)Math.Floor(y / (2 * largest)));
}
