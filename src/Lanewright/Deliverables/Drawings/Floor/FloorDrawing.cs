using System.Collections.Immutable;
using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Drawings.Floor;

/// <summary>A hall from above, to scale: racks in their rows, the exit of cables, and the pathways over them, shaded by how full they are,
/// with the points where cables come down. A thousand cables are one band, so a large hall is as readable as a small one.</summary>
internal sealed class FloorDrawing
{
    private const double Room = Sheet.Width - (2 * Sheet.Margin);
    private const double MostHeight = 520;
    private const double Clear = 0.9;
    private const double LeastBand = 4;
    private const double FrontInset = 0.08;
    private const double LegendHeight = 74;
    private const double SmallSize = 10.5;
    private const double Roomy = 24;
    private const double TableRoom = 440;
    private const double TableStep = 18;
    private const double RiserMore = 6;
    private const int MostNamed = 34;
    private const double TurnedWords = 130;
    private readonly List<(double Left, double Top, double Right, double Bottom)> blocks = [];
    private readonly LabelRoom labels = new();
    private readonly FloorView? view;

    private readonly DesignedPlan designed;
    private readonly Hall hall;
    private readonly ImmutableArray<SegmentFill> fills;
    private readonly ImmutableArray<Rack> racks;
    private readonly FloorLayout layout;
    private readonly FloorStacks stacks;

    public FloorDrawing(DesignedPlan designed, Hall hall, ImmutableArray<SegmentFill> fills, FloorView? view = null)
    {
        this.view = view;
        this.designed = designed;
        this.hall = hall;
        this.fills = fills;
        stacks = new FloorStacks(fills.Select(f => f.Pathway).Distinct());
        racks = [.. designed.Plan.Building.Racks.Where(r => r.Hall == hall)];
        var xs = racks.SelectMany(r => new[] { r.X.Metres - (r.Type.Width.Metres / 2), r.X.Metres + (r.Type.Width.Metres / 2) })
            .Concat(Ends().Select(e => e.X)).Concat(Exits.Select(e => e.X.Metres)).ToList();
        var ys = racks.SelectMany(r => new[] { r.Y.Metres, r.Y.Metres + r.Type.Depth.Metres })
            .Concat(Ends().Select(e => e.Y)).Concat(Exits.Select(e => e.Y.Metres)).ToList();
        var (left, back) = (xs.Min() - Clear, ys.Min() - Clear);
        layout = new FloorLayout(left, back, xs.Max() + Clear - left, ys.Max() + Clear - back, Room, MostHeight);
    }

    /// <summary>Writes the drawing.</summary>
    public void Write(MarkupWriter markup, string id, bool isFile)
    {
        var bottom = Sheet.Top + layout.Height + LegendHeight;
        var fullest = fills.IsEmpty ? default : fills.Max(OfAllowed);
        var block = TitleBlock.Of(designed.Plan, hall.FullName,
            ("hall", hall.FullName, 2), ("racks", Numerals.Grouped(racks.Length), 0.8),
            ("fullest pathway, of what is allowed", fills.IsEmpty ? "none drawn" : Percent(fullest), 2.2), ("scale", "by the bar", 1));
        var head = new SheetHead(id, $"Floor of {hall.FullName}",
            fills.IsEmpty
                ? "Racks, their fronts marked where stated. The plan states no pathways here: cables may lie everywhere overhead."
                : "Racks, their fronts marked where stated; pathways over them, and dots where cables come down. Colours, per cent: how "
                    + "much of what is allowed cables take.",
            Description());
        Sheet.Write(markup, head, block, bottom, isFile, canvas =>
        {
            for (var strip = 0; strip < layout.Strips; strip++) Strip(canvas, strip);
            foreach (var rack in racks) Rack(canvas, rack);
            // All rims first, so that none runs across the joint of two bands.
            foreach (var fill in fills) Band(fill, (path, width) => canvas.Rim(path, width + Canvas.RimOver));
            foreach (var fill in fills) Band(fill, (path, width) => canvas.Stroke(path, ColourOf(fill), width));
            for (var strip = 0; strip < layout.Strips && layout.Strips > 1; strip++) Trim(canvas, strip);
            // A wide tray hides what stands below it.
            foreach (var rack in racks.Where(_ => !fills.IsEmpty)) Outline(canvas, rack);
            FloorDrops.Draw(canvas, layout, designed, hall);
            foreach (var row in racks.GroupBy(r => r.Row)) RowName(canvas, row.First());
            foreach (var exit in Exits) Exit(canvas, exit);
            var isDense = fills.Select(f => f.Pathway).Distinct().Count() > MostNamed;
            foreach (var pathway in fills.GroupBy(f => f.Pathway))
                Name(canvas, pathway.Key, pathway.Max(f => f.Cables), pathway.Max(OfAllowed), isDense);
            if (HasTable) Table(canvas);
            Legend(canvas, Sheet.Top + layout.Height + 18);
        });
    }

    /// <summary>Beside a narrow hall there is room for a table of its pathways.</summary>
    private bool HasTable => !fills.IsEmpty && Room - layout.Width >= TableRoom && layout.Strips == 1;

    /// <summary>How much of what is allowed is taken: what colours and figures on the plan mean.</summary>
    private Share OfAllowed(SegmentFill fill) => fill.OfMost(designed.Plan.Standards);

    private void Table(Canvas canvas)
    {
        const double right = Sheet.Width - Sheet.Margin;
        var left = Sheet.Margin + layout.Width + 28;
        double[] at = [left, right - 285, right - 200, right - 125, right];
        string[] heads = ["pathway, at its fullest", "cables", "cross-section", "allowed", "of what is allowed"];
        for (var i = 0; i < at.Length; i++) canvas.Text(at[i], Sheet.Top + 12, heads[i], i == 0 ? "small soft" : "small soft end");
        canvas.Line(left, Sheet.Top + 19, right, Sheet.Top + 19, "fine");
        var pathways = fills.GroupBy(f => f.Pathway).Select(g => g.MaxBy(OfAllowed)).OfType<SegmentFill>().ToList();
        var rows = Math.Min(pathways.Count, (int)((layout.Height - 40) / TableStep));
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

    private IEnumerable<HallExit> Exits => hall.Exits.Prepend(hall.Exit);

    /// <summary>The frame of a strip of the hall.</summary>
    private void Strip(Canvas canvas, int strip)
    {
        canvas.Box(Sheet.Margin, layout.TopOf(strip), layout.Width, layout.StripHeight, "faint");
    }

    /// <summary>Round ends of pathways stand out where a strip is cut: what is beside a strip is paper again. Its name stands over what a
    /// wide tray covers.</summary>
    private void Trim(Canvas canvas, int strip)
    {
        // Above the first strip stands the heading.
        var above = strip == 0 ? LeastBand : FloorLayout.HalfGap;
        var (top, height) = (layout.TopOf(strip) - above, layout.StripHeight + above + FloorLayout.HalfGap);
        var right = Sheet.Margin + layout.Width;
        canvas.Box(0, top, Sheet.Margin, height, "paper");
        canvas.Box(right, top, Sheet.Width - right, height, "paper");
        var words = $"strip {Numerals.Whole(strip + 1)} of {Numerals.Whole(layout.Strips)}";
        var end = TextFit.Width(words, SmallSize) + Sheet.Margin + 8;
        canvas.Text(Sheet.Margin + 8, layout.TopOf(strip) + layout.StripHeight - 6, words, "small soft halo");
        var foot = layout.TopOf(strip) + layout.StripHeight;
        labels.Take(Sheet.Margin + 8, foot - 6 - SmallSize, end, foot);
    }

    private void Exit(Canvas canvas, HallExit exit)
    {
        var (x, y) = layout.At(exit.X.Metres, exit.Y.Metres);
        canvas.Circle(x, y, 5, "box");
        labels.Take(x - 6, y - 6, x + 6, y + 6);
        var name = exit.Name.Length == 0 ? "exit" : "exit " + exit.Name;
        var half = TextFit.Width(name, SmallSize) / 2;
        (double X, double Y)[] places = [(x - half, y + 19), (x - 9 - (2 * half), y + 4), (x + 9, y + 4), (x + 8, y - 7)];
        Label(canvas, name, [.. places.OrderBy(p => blocks.Exists(b =>
            b.Left < p.X + (2 * half) && p.X < b.Right && b.Top < p.Y && p.Y - SmallSize < b.Bottom))]);
    }

    private void Rack(Canvas canvas, Rack rack)
    {
        var (half, depth) = (rack.Type.Width.Metres / 2, rack.Type.Depth.Metres);
        var strip = layout.StripOf(rack.X.Metres, rack.Y.Metres + (depth / 2));
        var (x1, y1) = layout.At(rack.X.Metres - half, rack.Y.Metres, strip);
        var (x2, y2) = layout.At(rack.X.Metres + half, rack.Y.Metres + depth, strip);
        var (left, top, width, height) = (Math.Min(x1, x2), Math.Min(y1, y2), Math.Abs(x2 - x1), Math.Abs(y2 - y1));
        var leads = view is not null && canvas.BeginWay(view.Address(rack), "rack " + rack.Name);
        var isMarked = view is not null && view.Marked.Contains(rack);
        canvas.Box(left, top, width, height, isMarked ? "full" : "block");
        blocks.Add((left, top, left + width, top + height));
        Front(canvas, rack, strip, isMarked ? "faint" : "fine");
        if (Math.Min(width, height) >= Roomy || (width >= Roomy && height >= SmallSize + 4))
            canvas.Text(left + (width / 2), top + (height / 2) + 4, Numerals.Whole(rack.Number), "small mid" + (isMarked ? " light" : ""));
        if (leads) canvas.End();
    }

    private void Front(Canvas canvas, Rack rack, int strip, string style)
    {
        if (rack.Fronts is not { } fronts) return;
        var half = rack.Type.Width.Metres / 2;
        var front = rack.Y.Metres + (fronts == RowSide.Near ? FrontInset : rack.Type.Depth.Metres - FrontInset);
        var (x1, y1) = layout.At(rack.X.Metres - half, front, strip);
        var (x2, y2) = layout.At(rack.X.Metres + half, front, strip);
        canvas.Line(x1, y1, x2, y2, style);
    }

    private void Outline(Canvas canvas, Rack rack)
    {
        var (half, depth) = (rack.Type.Width.Metres / 2, rack.Type.Depth.Metres);
        var strip = layout.StripOf(rack.X.Metres, rack.Y.Metres + (depth / 2));
        var (x1, y1) = layout.At(rack.X.Metres - half, rack.Y.Metres, strip);
        var (x2, y2) = layout.At(rack.X.Metres + half, rack.Y.Metres + depth, strip);
        canvas.Box(Math.Min(x1, x2), Math.Min(y1, y2), Math.Abs(x2 - x1), Math.Abs(y2 - y1), "fine");
        Front(canvas, rack, strip, "fine");
    }

    private void RowName(Canvas canvas, Rack first)
    {
        var (half, middle) = (first.Type.Width.Metres / 2, first.Y.Metres + (first.Type.Depth.Metres / 2));
        var strip = layout.StripOf(first.X.Metres, middle);
        var (x, y) = layout.At(first.X.Metres - half, middle, strip);
        var width = TextFit.Width(first.Row, 12, bold: true);
        // Rows that run up the sheet have their name below the first rack.
        var (textX, textY) = layout.IsTurned ? (x + (width / 2), y + 16) : (x - 8, y + 4);
        canvas.Text(textX, textY, first.Row, "bold end halo");
        labels.Take(textX - width, textY - 12, textX, textY + 2);
    }

    private string ColourOf(SegmentFill fill) =>
        OfAllowed(fill) is { Value: <= 1 } taken ? LoadColour.Of(taken) : DrawingStyle.Accent;

    private void Band(SegmentFill fill, Action<string, double> draw)
    {
        var (a, b) = (fill.Net.Points[fill.Stretch.A], fill.Net.Points[fill.Stretch.B]);
        var (width, beside) = stacks.Of(fill.Pathway, layout.Scale, LeastBand);
        foreach (var line in layout.Line(a.X, a.Y, b.X, b.Y))
        {
            var (x1, y1, x2, y2) = FloorStacks.Moved(line, beside);
            // A riser is a point of the floor and is seen as one.
            var end = fill.Pathway.IsRiser ? x2 + 0.01 : x2;
            draw($"M{Canvas.N(x1)} {Canvas.N(y1)}L{Canvas.N(end)} {Canvas.N(y2)}", fill.Pathway.IsRiser ? width + RiserMore : width);
        }
    }

    /// <summary>Beside its line, where no other label stands; upright along a pathway that runs so.</summary>
    private void Name(Canvas canvas, Pathway pathway, int cables, Share fill, bool isDense)
    {
        var (x1, y1, x2, y2) = layout.Line(pathway.FromX.Metres, pathway.FromY.Metres, pathway.ToX.Metres, pathway.ToY.Metres)
            .MaxBy(l => Math.Abs(l.X2 - l.X1) + Math.Abs(l.Y2 - l.Y1));
        var off = (Math.Max(LeastBand, pathway.Width.Metres * layout.Scale) / 2) + 4;
        var count = HasTable ? "" : $" {Numerals.Grouped(cables)} {(cables == 1 ? "cable" : "cables")},";
        // Where pathways stand close, their names would cover them: the table of pathways has all.
        var whole = isDense ? Percent(fill) : $"{pathway.Name}{Height(pathway)}:{count} {Percent(fill)}";
        if (Math.Abs(x2 - x1) >= Math.Abs(y2 - y1))
        {
            var text = pathway.IsRiser ? whole : TextFit.Short(whole, Math.Abs(x2 - x1) + 90, SmallSize);
            var width = TextFit.Width(text, SmallSize);
            double[] starts = [Math.Min(x1, x2) + off + 10, ((x1 + x2) - width) / 2, Math.Max(x1, x2) - off - 10 - width];
            var (above, below) = (((y1 + y2) / 2) - off, ((y1 + y2) / 2) + off + SmallSize - 2);
            double[] inside = [.. starts.Select(x => Math.Clamp(x, Sheet.Margin, Sheet.Width - Sheet.Margin - width))];
            Label(canvas, text, [.. inside.Select(x => (x, above)), .. inside.Select(x => (x, below))]);
            return;
        }
        var upright = TextFit.Short(whole, Math.Abs(y2 - y1) + 60, SmallSize);
        var length = TextFit.Width(upright, SmallSize);
        double[] bases = [Math.Max(y1, y2) - off - 10, ((y1 + y2) + length) / 2, Math.Min(y1, y2) + off + 10 + length];
        var (before, after) = (((x1 + x2) / 2) - off, ((x1 + x2) / 2) + off + SmallSize - 2);
        // Words neither leave the sheet nor run into its heading.
        double[] lowered = [.. bases.Select(y => Math.Max(y, Sheet.Top + length))];
        double[] sides = before - SmallSize < Sheet.Margin ? [after] : [before, after];
        var (px, py) = labels.FirstFree(
            [.. sides.SelectMany(x => lowered.Select(y => (x, y)))], (x, y) => (x - SmallSize, y - length, x + 2, y));
        canvas.Upright(px, py, upright, "small halo");
    }

    /// <summary>How high a pathway hangs, where that is not the usual height of the hall.</summary>
    private string Height(Pathway pathway)
    {
        var (low, high) = (Length.Min(pathway.FromHeight, pathway.ToHeight), Length.Max(pathway.FromHeight, pathway.ToHeight));
        if (low == high) return low == hall.PathwayHeight ? "" : $" at {Numerals.Fixed(low.Metres, 1)} m";
        return $" from {Numerals.Fixed(low.Metres, 1)} m up to {Numerals.Fixed(high.Metres, 1)} m";
    }

    private void Label(Canvas canvas, string text, ReadOnlySpan<(double X, double Y)> places)
    {
        var width = TextFit.Width(text, SmallSize);
        var (px, py) = labels.FirstFree(places.ToArray(), (x, y) => (x, y - SmallSize, x + width, y + 2));
        canvas.Text(px, py, text, "small halo");
    }

    private void Legend(Canvas canvas, double y)
    {
        var step = new[] { 1.0, 2, 5, 10, 20, 50, 100 }.Last(s => s == 1 || s * layout.Scale <= Room / 4);
        canvas.Line(Sheet.Margin, y + 12, Sheet.Margin + (step * layout.Scale), y + 12, "heavy");
        canvas.Text(Sheet.Margin, y + 4, $"{Numerals.Plain(step)} m" + (layout.IsTurned ? ", rows run up the sheet" : ""), "small");
        if (fills.IsEmpty) return;
        const double wide = 14;
        var x = Sheet.Margin + Math.Max(step * layout.Scale, layout.IsTurned ? TurnedWords : 0) + 60;
        canvas.Text(x, y + 4, "of what is allowed: from none to all; over it in red", "small");
        for (var i = 0; i <= 20; i++) canvas.Filled(x + (i * wide), y + 9, wide, 8, LoadColour.Of(Share.FromPercent(i * 5)));
        canvas.Filled(x + (22 * wide), y + 9, wide, 8, DrawingStyle.Accent);
        canvas.Text(Sheet.Margin, y + 40,
            (fills.Any(f => Height(f.Pathway).Length > 0) ? "" : $"Pathways hang at {Numerals.Fixed(hall.PathwayHeight.Metres, 1)} m. ")
            + "Openings in rated walls and floors take fire-stopping to the local code. Trays are bonded and kept clear of sprinklers; "
            + "work on ladders is for trained persons.", "small soft");
        if (!stacks.Any) return;
        canvas.Text(
            Sheet.Margin, y + 54, "Pathways above one another share a band, the highest towards the top or the left.", "small soft");
    }

    private static string Percent(Share share) => Numerals.Fixed(share.Percent, 1) + " %";

    private string Description() => string.Join(" ", fills.GroupBy(f => f.Pathway).Select(p =>
        $"Pathway {p.Key.Name}: {Numerals.Whole(p.Max(f => f.Cables))} cables, {Percent(p.Max(f => f.Fill))} of its cross-section at most, "
        + $"{Percent(p.Max(OfAllowed))} of what is allowed."))
        + $" {Numerals.Whole(racks.Length)} racks.";
}
