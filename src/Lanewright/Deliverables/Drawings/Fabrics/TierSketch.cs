using System.Collections.Immutable;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Wanted;

namespace Lanewright.Deliverables.Drawings.Fabrics;

/// <summary>An option in a few strokes: a row of boxes for each tier, and how the rows are joined.</summary>
internal static class TierSketch
{
    /// <summary>Height of every sketch.</summary>
    public const double Height = 196;

    private const double BoxHeight = 16;
    private const double LabelHeight = 13;
    private const int MostBoxes = 5;

    /// <summary>Draws it with its upper left corner at a point.</summary>
    public static void Draw(Canvas canvas, FabricOption option, double x, double y, double width)
    {
        var rows = Rows(option);
        var step = rows.Length > 1 ? (Height - BoxHeight - LabelHeight) / (rows.Length - 1) : 0;
        var centres = rows.Select(r => Centres(r.Count, x, width)).ToList();
        for (var i = 0; i + 1 < rows.Length; i++)
        {
            var (upperY, lowerY) = (y + (i * step) + BoxHeight + LabelHeight, y + ((i + 1) * step));
            Join(canvas, centres[i], upperY, centres[i + 1], lowerY, Nearest(option, i, rows.Length));
        }
        if (option.Shape == FabricShape.CollapsedPair && centres[0] is [var left, var right, ..])
            canvas.Line(left + 12, y + (BoxHeight / 2), right - 12, y + (BoxHeight / 2), "ink");
        for (var i = 0; i < rows.Length; i++) Row(canvas, rows[i], centres[i], y + (i * step), x, width);
    }

    /// <summary>The rows from the top: upper tiers first, hosts last.</summary>
    private static ImmutableArray<(string Words, int Count, string Style)> Rows(FabricOption option)
    {
        var rows = ImmutableArray.CreateBuilder<(string, int, string)>();
        foreach (var role in new[] { SwitchRole.Core, SwitchRole.Spine, SwitchRole.Aggregation, SwitchRole.Leaf, SwitchRole.Box })
        {
            var count = option.Switches.Where(s => s.Role == role).Sum(s => s.Count);
            if (count > 0) rows.Add((FabricWords.Counted(role, count), count, role == SwitchRole.Box ? "full" : "block"));
        }
        rows.Add((FabricWords.Counted(SwitchRole.Host, option.Hosts), option.Hosts, "hollow"));
        return rows.ToImmutable();
    }

    /// <summary>Whether boxes of a row go only to the nearest of the next: hosts do, unless they have a port on each.</summary>
    private static bool Nearest(FabricOption option, int row, int rows) =>
        row == rows - 2 && option.Shape is FabricShape.LeafSpine or FabricShape.ThreeTier && option.HostPorts == option.Hosts;

    private static ImmutableArray<double> Centres(int count, double x, double width)
    {
        var shown = Math.Min(count, MostBoxes);
        return [.. Enumerable.Range(0, shown).Select(i => x + (width * (i + 0.5) / shown))];
    }

    private static void Join(
        Canvas canvas, ImmutableArray<double> upper, double upperY, ImmutableArray<double> lower, double lowerY, bool isNearest)
    {
        for (var i = 0; i < upper.Length; i++)
        {
            for (var j = 0; j < lower.Length; j++)
            {
                var isNear = i == (int)((j + 0.5) * upper.Length / lower.Length);
                if (!isNearest || isNear) canvas.Line(upper[i], upperY, lower[j], lowerY, "faint");
            }
        }
    }

    private static void Row(
        Canvas canvas, (string Words, int Count, string Style) row, ImmutableArray<double> centres, double y, double x, double width)
    {
        var box = Math.Min(26, (width / MostBoxes) - 6);
        foreach (var centre in centres) canvas.Box(centre - (box / 2), y, box, BoxHeight, row.Style, 2);
        if (row.Count > MostBoxes)
        {
            // Between the last two, so that everybody sees that not all are drawn.
            var between = (centres[^1] + centres[^2]) / 2;
            for (var i = -1; i <= 1; i++) canvas.Circle(between + (i * 3.6), y + (BoxHeight / 2), 1.1, "full");
        }
        canvas.Text(x + (width / 2), y + BoxHeight + 11, row.Words, "small mid halo");
    }
}
