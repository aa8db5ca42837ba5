using System.Collections.Immutable;
using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Pathways;

/// <summary>Halls made of trays and racks for tests.</summary>
internal static class TrayGrid
{
    /// <summary>The hall.</summary>
    public static readonly Hall Room = new(0, "site", "hall", Length.FromMetres(2.6), default, default, default);

    private static readonly RackType Kind =
        new("rack", 48, Length.FromMillimetres(600), Length.FromMillimetres(1200), Length.FromMillimetres(150), default);

    /// <summary>A tray.</summary>
    public static Pathway Tray(string name, double fromX, double fromY, double toX, double toY) => new(
        Room, name, Length.FromMetres(fromX), Length.FromMetres(fromY), Length.FromMetres(toX), Length.FromMetres(toY),
        Length.FromMillimetres(300), Length.FromMillimetres(100), false, default);

    /// <summary>A rack.</summary>
    public static Rack Rack(int index, double x, double y) =>
        new(index, Room, "R", index + 1, Length.FromMetres(x), Length.FromMetres(y), Kind);

    /// <summary>The graph of trays and racks.</summary>
    public static WayNet Net(IEnumerable<Pathway> trays, IEnumerable<Rack> racks) =>
        WayNet.Of(new Building([Room], [.. racks], []) { Pathways = [.. trays] }, StandardsLibrary.Shipped);

    /// <summary>Trays between the points of a grid, as far as they are there.</summary>
    public static IEnumerable<Pathway> Grid(int rows, int columns, bool[] isThere, double[] steps)
    {
        var next = 0;
        for (var r = 0; r < rows; r++)
        {
            for (var c = 0; c < columns; c++)
            {
                if (c + 1 < columns && isThere[next++ % isThere.Length]) yield return Tray($"h{r}-{c}", At(c), At(r), At(c + 1), At(r));
                if (r + 1 < rows && isThere[next++ % isThere.Length]) yield return Tray($"v{r}-{c}", At(c), At(r), At(c), At(r + 1));
            }
        }

        double At(int i) => steps.Take(i).Sum();
    }

    /// <summary>The edges of a graph as a library wants them.</summary>
    public static IEnumerable<double[]> Edges(WayNet net) => net.Edges.Select(e => new[] { e.A, e.B, e.Metres });

    /// <summary>What is laid from rack to rack, and its way.</summary>
    public static CableWay? Way(WayNet net, int from, int to) => new ShortestWays(net).Between(WayQuestion.Between(from, to, 0));

    /// <summary>The names of the pathways of a way, each once in a row.</summary>
    public static ImmutableArray<string> Names(WayNet net, CableWay? way) =>
        [.. (way?.Stretches ?? []).Select(s => net.Stretches[s].Pathway.Name).Distinct()];
}
