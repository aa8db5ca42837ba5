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
    private const double MostHeight = 820;
    private const double Clear = 0.9;
    private const double LeastBand = 4;
    private const double FrontInset = 0.08;
    private const double LegendHeight = 74;
    private const double SmallSize = 10.5;
    private const double Roomy = 24;
    private const double TableRoom = 440;
    private const double TableStep = 18;
    private readonly LabelRoom labels = new();
    private readonly FloorView? view;

    private readonly DesignedPlan designed;
    private readonly Hall hall;
    private readonly ImmutableArray<SegmentFill> fills;
    private readonly ImmutableArray<Rack> racks;
    private readonly double left;
    private readonly double back;
    private readonly double metres;
    private readonly double deep;
    private readonly double scale;

    public FloorDrawing(DesignedPlan designed, Hall hall, ImmutableArray<SegmentFill> fills, FloorView? view = null)
    {
        this.view = view;
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
        var fullest = fills.IsEmpty ? default : fills.Max(OfAllowed);
        var block = TitleBlock.Of(designed.Plan, hall.FullName,
            ("hall", hall.FullName, 2), ("racks", Numerals.Grouped(racks.Length), 0.8),
            ("fullest pathway, of what is allowed", fills.IsEmpty ? "none drawn" : Percent(fullest), 2.2), ("scale", "by the bar", 1));
        var head = new SheetHead(id, $"Floor of {hall.FullName}",
            fills.IsEmpty
                ? "Racks with their fronts marked. The plan states no pathways here: cables may lie everywhere overhead."
                : "Racks with their fronts marked, pathways over them. Colours and per cent on the plan: how much of what is allowed their "
                    + "cables take.",
            Description());
        Sheet.Write(markup, head, block, bottom, isFile, canvas =>
        {
            canvas.Box(Sheet.Margin, Sheet.Top, metres * scale, deep * scale, "faint");
            foreach (var rack in racks) Rack(canvas, rack);
            foreach (var row in racks.GroupBy(r => r.Row)) RowName(canvas, row.First());
            foreach (var fill in fills) Band(canvas, fill);
            var (exitX, exitY) = At(hall.ExitX.Metres, hall.ExitY.Metres);
            canvas.Circle(exitX, exitY, 5, "box");
            labels.Take(exitX - 6, exitY - 6, exitX + 6, exitY + 6);
            var half = TextFit.Width("exit", SmallSize) / 2;
            Label(canvas, "exit", [(exitX - half, exitY + 19), (exitX + 9, exitY + 4), (exitX + 8, exitY - 7)]);
            foreach (var pathway in fills.GroupBy(f => f.Pathway))
                Name(canvas, pathway.Key, pathway.Max(f => f.Cables), pathway.Max(OfAllowed));
            if (HasTable) Table(canvas);
            Legend(canvas, Sheet.Top + (deep * scale) + 18);
        });
    }

    /// <summary>Beside a narrow hall there is room for a table of its pathways.</summary>
    private bool HasTable => !fills.IsEmpty && Room - (metres * scale) >= TableRoom;

    /// <summary>How much of what is allowed is taken: what colours and figures on the plan mean.</summary>
    private Share OfAllowed(SegmentFill fill) => Share.From(fill.Fill.Value / fill.Most(designed.Plan.Standards).Value);

    private void Table(Canvas canvas)
    {
        const double right = Sheet.Width - Sheet.Margin;
        var left = Sheet.Margin + (metres * scale) + 28;
        double[] at = [left, right - 250, right - 165, right - 95, right];
        string[] heads = ["pathway, at its fullest", "cables", "cross-section", "allowed", "of what is allowed"];
        for (var i = 0; i < at.Length; i++) canvas.Text(at[i], Sheet.Top + 12, heads[i], i == 0 ? "small soft" : "small soft end");
        canvas.Line(left, Sheet.Top + 19, right, Sheet.Top + 19, "fine");
        var pathways = fills.GroupBy(f => f.Pathway).Select(g => g.MaxBy(OfAllowed)).OfType<SegmentFill>().ToList();
        var rows = Math.Min(pathways.Count, (int)(((deep * scale) - 40) / TableStep));
        for (var row = 0; row < rows; row++)
        {
            var (fill, y) = (pathways[row], Sheet.Top + 20 + ((row + 1) * TableStep));
            string[] cells =
            [
                TextFit.Short(fill.Pathway.Name, at[1] - left - 60, 12), Numerals.Grouped(fill.Cables), Percent(fill.Fill),
                Percent(Share.From(fill.Most(designed.Plan.Standards).Value)), Percent(OfAllowed(fill)),
            ];
            for (var i = 0; i < at.Length; i++)
                canvas.Text(at[i], y, cells[i], (i == 0 ? "" : "end") + (i == 4 && OfAllowed(fill).Value > 1 ? " alert" : ""));
        }
        if (rows < pathways.Count)
            canvas.Text(left, Sheet.Top + 22 + ((rows + 1) * TableStep),
                $"and {Numerals.Whole(pathways.Count - rows)} more: pathways.csv lists all", "small soft");
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
        var leads = view is not null && canvas.BeginWay(view.Address(rack), "rack " + rack.Name);
        canvas.Box(x, y, width, depth, "block");
        canvas.Line(x, y + (FrontInset * scale), x + width, y + (FrontInset * scale), "fine");
        if (width >= Roomy) canvas.Text(x + (width / 2), y + (depth / 2) + 4, Numerals.Whole(rack.Number), "small mid");
        if (view is not null && view.Marked.Contains(rack)) canvas.Box(x + 2, y + 2, width - 4, depth - 4, "heavy");
        if (leads) canvas.End();
    }

    private void RowName(Canvas canvas, Rack first)
    {
        var (x, y) = At(first.X.Metres - (first.Type.Width.Metres / 2), first.Y.Metres + (first.Type.Depth.Metres / 2));
        canvas.Text(x - 8, y + 4, first.Row, "bold end halo");
        labels.Take(x - 8 - TextFit.Width(first.Row, 12, bold: true), y - 8, x - 8, y + 6);
    }

    private void Band(Canvas canvas, SegmentFill fill)
    {
        var segment = fill.Ways.Graph.Segments[fill.Segment];
        var (a, b) = (fill.Ways.Graph.Points[segment.A], fill.Ways.Graph.Points[segment.B]);
        var ((x1, y1), (x2, y2)) = (At(a.X, a.Y), At(b.X, b.Y));
        var width = Math.Max(LeastBand, fill.Pathway.Width.Metres * scale);
        var line = $"M{Canvas.N(x1)} {Canvas.N(y1)}L{Canvas.N(x2)} {Canvas.N(y2)}";
        var taken = OfAllowed(fill);
        canvas.Stroke(line, taken.Value > 1 ? DrawingStyle.Accent : LoadColour.Of(taken), width);
    }

    /// <summary>Beside its line, where no other label stands; upright along a pathway that runs so.</summary>
    private void Name(Canvas canvas, Pathway pathway, int cables, Share fill)
    {
        var (x1, y1) = At(pathway.FromX.Metres, pathway.FromY.Metres);
        var (x2, y2) = At(pathway.ToX.Metres, pathway.ToY.Metres);
        var off = (Math.Max(LeastBand, pathway.Width.Metres * scale) / 2) + 4;
        var count = HasTable ? "" : $" {Numerals.Grouped(cables)} {(cables == 1 ? "cable" : "cables")},";
        var whole = $"{pathway.Name}:{count} {Percent(fill)}";
        if (Math.Abs(x2 - x1) >= Math.Abs(y2 - y1))
        {
            var text = TextFit.Short(whole, Math.Abs(x2 - x1) + 90, SmallSize);
            var width = TextFit.Width(text, SmallSize);
            double[] starts = [Math.Min(x1, x2) + off + 10, ((x1 + x2) - width) / 2, Math.Max(x1, x2) - off - 10 - width];
            var (above, below) = (((y1 + y2) / 2) - off, ((y1 + y2) / 2) + off + SmallSize - 2);
            Label(canvas, text, [.. starts.Select(x => (x, above)), .. starts.Select(x => (x, below))]);
            return;
        }
        var upright = TextFit.Short(whole, Math.Abs(y2 - y1) + 60, SmallSize);
        var length = TextFit.Width(upright, SmallSize);
        double[] bases = [Math.Max(y1, y2) - off - 10, ((y1 + y2) + length) / 2, Math.Min(y1, y2) + off + 10 + length];
        var (before, after) = (((x1 + x2) / 2) - off, ((x1 + x2) / 2) + off + SmallSize - 2);
        var (px, py) = labels.FirstFree(
            [.. bases.Select(y => (before, y)), .. bases.Select(y => (after, y))], (x, y) => (x - SmallSize, y - length, x + 2, y));
        canvas.Upright(px, py, upright, "small halo");
    }

    private void Label(Canvas canvas, string text, ReadOnlySpan<(double X, double Y)> places)
    {
        var width = TextFit.Width(text, SmallSize);
        var (px, py) = labels.FirstFree(places.ToArray(), (x, y) => (x, y - SmallSize, x + width, y + 2));
        canvas.Text(px, py, text, "small halo");
    }

    private void Legend(Canvas canvas, double y)
    {
        var step = new[] { 1.0, 2, 5, 10, 20, 50, 100 }.Last(s => s == 1 || s * scale <= Room / 4);
        canvas.Line(Sheet.Margin, y + 12, Sheet.Margin + (step * scale), y + 12, "heavy");
        canvas.Text(Sheet.Margin, y + 4, $"{Numerals.Plain(step)} m", "small");
        if (fills.IsEmpty) return;
        const double wide = 14;
        var x = Sheet.Margin + (step * scale) + 60;
        canvas.Text(x, y + 4, "of what is allowed: from none to all; over it in red", "small");
        for (var i = 0; i <= 20; i++) canvas.Filled(x + (i * wide), y + 9, wide, 8, LoadColour.Of(Share.FromPercent(i * 5)));
        canvas.Filled(x + (22 * wide), y + 9, wide, 8, DrawingStyle.Accent);
        canvas.Text(Sheet.Margin, y + 40,
            "Openings in rated walls and floors take fire-stopping to the local code. Trays are bonded and kept clear of sprinklers; "
            + "work on ladders is for trained persons.", "small soft");
    }

    private static string Percent(Share share) => Numerals.Fixed(share.Percent, 1) + " %";

    private string Description() => string.Join(" ", fills.GroupBy(f => f.Pathway).Select(p =>
        $"Pathway {p.Key.Name}: {Numerals.Whole(p.Max(f => f.Cables))} cables, {Percent(p.Max(f => f.Fill))} of its cross-section at most, "
        + $"{Percent(p.Max(OfAllowed))} of what is allowed."))
        + $" {Numerals.Whole(racks.Length)} racks.";
}
