using System.Collections.Immutable;
using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Drawings.Floor;

/// <summary>A hall from above, to scale: racks in their rows with the fronts marked, the exit of cables, and the pathways over them, shaded
/// by how full they are. A thousand cables are one band, so a large hall is as readable as a small one.</summary>
internal sealed class FloorDrawing
{
    private const double Room = Sheet.Width - (2 * Sheet.Margin);
    private const double MostHeight = 640;
    private const double Clear = 0.9;
    private const double LeastBand = 4;
    private const double FrontInset = 0.08;
    private const double LegendHeight = 74;
    private const double SmallSize = 10.5;
    private const double Roomy = 24;

    private readonly DesignedPlan designed;
    private readonly Hall hall;
    private readonly ImmutableArray<SegmentFill> fills;
    private readonly ImmutableArray<Rack> racks;
    private readonly double left;
    private readonly double back;
    private readonly double metres;
    private readonly double deep;
    private readonly double scale;

    public FloorDrawing(DesignedPlan designed, Hall hall, ImmutableArray<SegmentFill> fills)
    {
        this.designed = designed;
        this.hall = hall;
        this.fills = fills;
        racks = [.. designed.Plan.Building.Racks.Where(r => r.Hall == hall)];
        var xs = racks.SelectMany(r => new[] { r.X.Metres - (r.Type.Width.Metres / 2), r.X.Metres + (r.Type.Width.Metres / 2) })
            .Concat(Ends().Select(e => e.X)).Append(hall.ExitX.Metres).ToList();
        var ys = racks.SelectMany(r => new[] { r.Y.Metres, r.Y.Metres + r.Type.Depth.Metres })
            .Concat(Ends().Select(e => e.Y)).Append(hall.ExitY.Metres).ToList();
        (left, back) = (xs.Min() - Clear, ys.Min() - Clear);
        (metres, deep) = (xs.Max() + Clear - left, ys.Max() + Clear - back);
        scale = Math.Min(Room / metres, MostHeight / deep);
    }

    /// <summary>Writes the drawing.</summary>
    public void Write(MarkupWriter markup, string id, bool isFile)
    {
        var bottom = Sheet.Top + (deep * scale) + LegendHeight;
        var fullest = fills.IsEmpty ? default : fills.Max(f => f.Fill);
        var block = TitleBlock.Of(designed.Plan, hall.FullName,
            ("hall", hall.FullName, 2), ("racks", Numerals.Grouped(racks.Length), 0.8),
            ("fullest pathway", fills.IsEmpty ? "none drawn" : Percent(fullest), 1.4), ("scale", "by the bar", 1));
        var head = new SheetHead(id, $"Floor of {hall.FullName}",
            fills.IsEmpty
                ? "Racks with their fronts marked. The plan states no pathways here: cables may lie everywhere overhead."
                : "Racks with their fronts marked, pathways over them shaded by the share of their cross-section that cables take.",
            Description());
        Sheet.Write(markup, head, block, bottom, isFile, canvas =>
        {
            canvas.Box(Sheet.Margin, Sheet.Top, metres * scale, deep * scale, "faint");
            foreach (var rack in racks) Rack(canvas, rack);
            foreach (var row in racks.GroupBy(r => r.Row)) RowName(canvas, row.First());
            foreach (var fill in fills) Band(canvas, fill);
            foreach (var pathway in fills.GroupBy(f => f.Pathway))
                Name(canvas, pathway.Key, pathway.Max(f => f.Cables), pathway.Max(f => f.Fill));
            var (exitX, exitY) = At(hall.ExitX.Metres, hall.ExitY.Metres);
            canvas.Circle(exitX, exitY, 5, "box");
            canvas.Text(exitX + 8, exitY - 7, "exit", "small halo");
            Legend(canvas, Sheet.Top + (deep * scale) + 18);
        });
    }

    private IEnumerable<WayPoint> Ends() => fills.Select(f => f.Pathway).Distinct().SelectMany(p => new[]
    {
        new WayPoint(p.FromX.Metres, p.FromY.Metres), new WayPoint(p.ToX.Metres, p.ToY.Metres),
    });

    private (double X, double Y) At(double x, double y) => (Sheet.Margin + ((x - left) * scale), Sheet.Top + ((y - back) * scale));

    private void Rack(Canvas canvas, Rack rack)
    {
        var (x, y) = At(rack.X.Metres - (rack.Type.Width.Metres / 2), rack.Y.Metres);
        var (width, depth) = (rack.Type.Width.Metres * scale, rack.Type.Depth.Metres * scale);
        canvas.Box(x, y, width, depth, "block");
        canvas.Line(x, y + (FrontInset * scale), x + width, y + (FrontInset * scale), "fine");
        if (width >= Roomy) canvas.Text(x + (width / 2), y + (depth / 2) + 4, Numerals.Whole(rack.Number), "small mid");
    }

    private void RowName(Canvas canvas, Rack first)
    {
        var (x, y) = At(first.X.Metres - (first.Type.Width.Metres / 2), first.Y.Metres + (first.Type.Depth.Metres / 2));
        canvas.Text(x - 8, y + 4, first.Row, "bold end halo");
    }

    private void Band(Canvas canvas, SegmentFill fill)
    {
        var segment = fill.Ways.Graph.Segments[fill.Segment];
        var (a, b) = (fill.Ways.Graph.Points[segment.A], fill.Ways.Graph.Points[segment.B]);
        var ((x1, y1), (x2, y2)) = (At(a.X, a.Y), At(b.X, b.Y));
        var width = Math.Max(LeastBand, fill.Pathway.Width.Metres * scale);
        var line = $"M{Canvas.N(x1)} {Canvas.N(y1)}L{Canvas.N(x2)} {Canvas.N(y2)}";
        var most = fill.Most(designed.Plan.Standards).Value;
        canvas.Stroke(line, fill.Fill.Value > most ? DrawingStyle.Accent : LoadColour.Of(Share.From(fill.Fill.Value / most)), width);
    }

    /// <summary>Beside its middle, upright along a pathway that runs so.</summary>
    private void Name(Canvas canvas, Pathway pathway, int cables, Share fill)
    {
        var (x1, y1) = At(pathway.FromX.Metres, pathway.FromY.Metres);
        var (x2, y2) = At(pathway.ToX.Metres, pathway.ToY.Metres);
        var off = (Math.Max(LeastBand, pathway.Width.Metres * scale) / 2) + 4;
        var text = $"{pathway.Name}: {Numerals.Grouped(cables)} {(cables == 1 ? "cable" : "cables")}, {Percent(fill)}";
        if (Math.Abs(x2 - x1) >= Math.Abs(y2 - y1))
            canvas.Text(Math.Min(x1, x2) + 6, ((y1 + y2) / 2) - off, TextFit.Short(text, Math.Abs(x2 - x1) + 90, SmallSize), "small halo");
        else
            canvas.Upright(
                ((x1 + x2) / 2) - off, Math.Max(y1, y2) - 6, TextFit.Short(text, Math.Abs(y2 - y1) + 60, SmallSize), "small halo");
    }

    private void Legend(Canvas canvas, double y)
    {
        var step = new[] { 1.0, 2, 5, 10, 20, 50, 100 }.Last(s => s == 1 || s * scale <= Room / 4);
        canvas.Line(Sheet.Margin, y + 12, Sheet.Margin + (step * scale), y + 12, "heavy");
        canvas.Text(Sheet.Margin, y + 4, $"{Numerals.Plain(step)} m", "small");
        if (fills.IsEmpty) return;
        const double wide = 14;
        var x = Sheet.Margin + (step * scale) + 60;
        canvas.Text(x, y + 4, "filled, of what is allowed: empty to full; over it in red", "small");
        for (var i = 0; i <= 20; i++) canvas.Filled(x + (i * wide), y + 9, wide, 8, LoadColour.Of(Share.FromPercent(i * 5)));
        canvas.Filled(x + (22 * wide), y + 9, wide, 8, DrawingStyle.Accent);
        canvas.Text(Sheet.Margin, y + 40,
            "Openings in rated walls and floors take fire-stopping to the local code. Trays are bonded and kept clear of sprinklers; "
            + "work on ladders is for trained persons.", "small soft");
    }

    private static string Percent(Share share) => Numerals.Fixed(share.Percent, 1) + " %";

    private string Description() => string.Join(" ", fills.GroupBy(f => f.Pathway).Select(p =>
        $"Pathway {p.Key.Name}: {Numerals.Whole(p.Max(f => f.Cables))} cables, {Percent(p.Max(f => f.Fill))} full at most."))
        + $" {Numerals.Whole(racks.Length)} racks.";
}
