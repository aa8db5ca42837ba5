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
    private const int LeavesFromBelow = 3;

    /// <summary>Draws it with its upper left corner at a point.</summary>
    public static void Draw(Canvas canvas, FabricOption option, double x, double y, double width)
    {
        var rows = Rows(option);
        var step = rows.Length > 1 ? (Height - BoxHeight - LabelHeight) / (rows.Length - 1) : 0;
        var centres = rows.Select(r => Centres(r.Count, x, width)).ToList();
        for (var i = 0; i + 1 < rows.Length; i++)
        {
            var (upperY, lowerY) = (y + (i * step) + BoxHeight + LabelHeight, y + ((i + 1) * step));
            Join(canvas, centres[i], upperY, centres[i + 1], lowerY, Parts(option, i, rows));
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

    /// <summary>Into how many parts two rows fall that are joined each in itself: hosts with a port go to the nearest box, and leaves to
    /// the switches of their pod.</summary>
    private static int Parts(FabricOption option, int row, ImmutableArray<(string Words, int Count, string Style)> rows)
    {
        if (option.Shape is not (FabricShape.LeafSpine or FabricShape.ThreeTier)) return 1;
        if (row == rows.Length - 2) return option.HostPorts == option.Hosts ? rows[row].Count : 1;
        var isPods = option.Shape == FabricShape.ThreeTier && row == rows.Length - LeavesFromBelow && !option.Uplinks.IsEmpty;
        return isPods ? Math.Max(1, rows[row].Count / Math.Max(1, option.Uplinks[0].Uppers)) : 1;
    }

    private static ImmutableArray<double> Centres(int count, double x, double width)
    {
        var shown = Math.Min(count, MostBoxes);
        return [.. Enumerable.Range(0, shown).Select(i => x + (width * (i + 0.5) / shown))];
    }

    private static void Join(
        Canvas canvas, ImmutableArray<double> upper, double upperY, ImmutableArray<double> lower, double lowerY, int parts)
    {
        for (var i = 0; i < upper.Length; i++)
        {
            for (var j = 0; j < lower.Length; j++)
            {
                var shown = Math.Min(parts, upper.Length);
                var isJoined = (int)((i + 0.5) * shown / upper.Length) == (int)((j + 0.5) * shown / lower.Length);
                if (isJoined) canvas.Line(upper[i], upperY, lower[j], lowerY, "faint");
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
