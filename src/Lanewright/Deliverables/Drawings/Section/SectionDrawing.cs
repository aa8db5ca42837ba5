using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Pathways;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Drawings.Section;

/// <summary>A tray or duct cut across at its fullest stretch, to scale: its walls, the bundles in it, the levels of what is planned and
/// allowed, and what the bundles are.</summary>
internal sealed class SectionDrawing
{
    private const double MostWidth = 620;
    private const double MostDepth = 420;
    private const double LeastDepth = 150;
    private const double LegendRoom = 470;
    private const double Step = 20;
    private const double LeastCircle = 0.35;
    private const double LetterDrop = 3;
    private const double LeastLettered = 4;

    /// <summary>Of more bundles only the rings are drawn.</summary>
    private const int MostInside = 150;
    private const int Letters = 26;

    private readonly DesignedPlan designed;
    private readonly SegmentFill fill;
    private readonly ImmutableArray<(CableItem Cable, int Count)> contents;
    private readonly ImmutableArray<SectionBundle> bundles;
    private readonly ImmutableArray<(double X, double Y)?> places;
    private readonly double scale;
    private readonly double width;
    private readonly double depth;

    public SectionDrawing(DesignedPlan designed, SegmentFill fill)
    {
        this.designed = designed;
        this.fill = fill;
        contents = designed.Pathways.Value.Contents(fill.Segment);
        (width, depth) = (fill.Pathway.Width.Millimetres, fill.Pathway.Depth.Millimetres);
        bundles = SectionBundle.Of(fill, contents, designed.Plan.Standards, HexPlaces.Ring);
        double[] radii = [.. bundles.Select(b => b.Radius)];
        places = fill.Pathway.IsDuct ? SectionPacking.PackRound(width, radii) : SectionPacking.Pack(width, radii);
        scale = Math.Min(MostWidth / width, MostDepth / Math.Max(depth, Top));
    }

    /// <summary>Height of the highest bundle above the floor of the tray, in millimetres.</summary>
    private double Top => places.Select((p, i) => p is { } place ? place.Y + bundles[i].Radius : 0).DefaultIfEmpty(0).Max();

    /// <summary>Writes the drawing.</summary>
    public void Write(MarkupWriter markup, string id, bool isFile)
    {
        var standards = designed.Plan.Standards;
        var pathway = fill.Pathway;
        var tall = Math.Max(LeastDepth, Math.Max(depth, Top) * scale);
        var bottom = Sheet.Top + Math.Max(tall + 70, 60 + (Math.Max(4, contents.Length + 3) * Step));
        var block = TitleBlock.Of(designed.Plan, pathway.FullName,
            ("pathway", pathway.FullName, 2), ("cables", Numerals.Grouped(fill.Cables), 0.8),
            ("fill, and the most", $"{Percent(fill.Fill.Percent)} of {Percent(fill.Most(standards).Value * 100)}", 1.9),
            ("weight", WeightWords(), 2.7), ("scale", "by the bar", 1.2));
        var a = fill.Net.Points[fill.Stretch.A];
        var b = fill.Net.Points[fill.Stretch.B];
        var where = pathway.Route is null
            ? $"between {Numerals.Fixed(a.X, 1)}, {Numerals.Fixed(a.Y, 1)} m and {Numerals.Fixed(b.X, 1)}, {Numerals.Fixed(b.Y, 1)} m"
            : "on its way between halls";
        var head = new SheetHead(id, $"Section of {pathway.FullName}",
            $"The fullest stretch, {where}. {Drawn()}",
            $"{pathway.Kind} {Numerals.Plain(width)} mm by {Numerals.Plain(depth)} mm with {Numerals.Whole(fill.Cables)} cables. "
                + string.Join(" ", contents.Select(c => $"{Numerals.Whole(c.Count)} of {c.Cable.Name}.")));
        Sheet.Write(markup, head, block, bottom, isFile, canvas =>
        {
            var (left, floor) = (Sheet.Margin + 10, Sheet.Top + 20 + tall);
            Walls(canvas, left, floor);
            for (var i = 0; i < bundles.Length; i++)
                if (places[i] is { } place) Bundle(canvas, bundles[i], left + (place.X * scale), floor - (place.Y * scale));
            if (!pathway.IsDuct && Top > depth) Above(canvas, left, floor);
            Bar(canvas, left, floor);
            Legend(canvas, Sheet.Width - Sheet.Margin - LegendRoom);
        });
    }

    private void Walls(Canvas canvas, double left, double floor)
    {
        var (right, rim) = (left + (width * scale), floor - (depth * scale));
        if (fill.Pathway.IsDuct)
        {
            canvas.Circle(left + (width * scale / 2), floor - (width * scale / 2), width * scale / 2, "ink");
            return;
        }
        canvas.Path($"M{Canvas.N(left)} {Canvas.N(rim)}V{Canvas.N(floor)}H{Canvas.N(right)}V{Canvas.N(rim)}", "heavy");
        canvas.Line(left, rim, right, rim, "faint broken");
    }

    /// <summary>A bundle as a ring with its cables in it, where they can be told apart.</summary>
    private void Bundle(Canvas canvas, SectionBundle bundle, double x, double y)
    {
        var own = contents[bundle.Kind].Cable.Diameter.Millimetres / 2 * scale;
        if (bundle.Cables == 1) CableMark.Draw(canvas, x, y, Math.Max(own, LeastCircle), bundle.Kind);
        else if (bundles.Length > MostInside) CableMark.Draw(canvas, x, y, bundle.Radius * scale, bundle.Kind);
        else
        {
            canvas.Circle(x, y, bundle.Radius * scale, "faint");
            var drawn = Math.Max(own, LeastCircle);
            foreach (var (dx, dy) in HexPlaces.Of(bundle.Cables, own)) CableMark.Draw(canvas, x + dx, y + dy, drawn, bundle.Kind);
        }
        // Marks are soon used up; letters tell any number of kinds apart.
        if (bundle.Radius * scale >= LeastLettered) canvas.Text(x, y + LetterDrop, Letter(bundle.Kind), "tiny mid halo");
    }

    /// <summary>What a kind of cable is called in the drawing and its legend.</summary>
    private static string Letter(int kind) => kind < Letters ? ((char)('a' + kind)).ToString() : Numerals.Whole(kind + 1);

    private void Above(Canvas canvas, double left, double floor)
    {
        var y = floor - (depth * scale);
        canvas.Line(left, y, left + (width * scale), y, "act");
        canvas.Text(left + (width * scale) + 6, y + 4, "rim", "alert");
    }

    /// <summary>How what lies there is drawn, and what has no place in the drawing.</summary>
    private string Drawn()
    {
        var missing = Enumerable.Range(0, bundles.Length).Where(i => places[i] is null).Sum(i => bundles[i].Cables)
            + contents.Where(c => c.Cable.Diameter.Metres <= 0).Sum(c => c.Count);
        var how = bundles.All(b => b.Cables == 1)
            ? "Cables drawn one by one, laid where they come to rest."
            : "Cables drawn in bundles as thick as they are when tied, laid where they come to rest.";
        return missing == 0 ? how
            : $"{how} {Numerals.Grouped(missing)} are not drawn: too thick for it, of unknown diameter, or without room.";
    }

    private void Bar(Canvas canvas, double left, double floor)
    {
        var step = new[] { 1.0, 2, 5, 10, 20, 50, 100, 200, 500 }.Last(s => s == 1 || s * scale <= 160);
        canvas.Line(left, floor + 22, left + (step * scale), floor + 22, "heavy");
        canvas.Text(left, floor + 40, $"{Numerals.Plain(step)} mm", "small");
    }

    private void Legend(Canvas canvas, double x)
    {
        var y = Sheet.Top + 20;
        canvas.Text(x, y, "cable", "small soft");
        canvas.Text(x + 290, y, "mm", "small soft end");
        canvas.Text(x + 350, y, "cables", "small soft end");
        canvas.Text(x + 420, y, "kg/m", "small soft end");
        canvas.Line(x, y + 6, x + LegendRoom - 40, y + 6, "fine");
        for (var kind = 0; kind < contents.Length; kind++)
        {
            y += Step;
            var (cable, count) = contents[kind];
            CableMark.Draw(canvas, x + 6, y + 2, 5, kind);
            canvas.Text(x + 20, y + 6, Letter(kind));
            canvas.Text(x + 34, y + 6, TextFit.Short(cable.Name, 226, 12));
            canvas.Text(x + 290, y + 6, cable.Diameter.Metres > 0 ? Numerals.Plain(cable.Diameter.Millimetres) : "unknown", "end");
            canvas.Text(x + 350, y + 6, Numerals.Grouped(count), "end");
            var weight = CableWeight.AMetreOf(cable, designed.Plan.Standards);
            canvas.Text(x + 420, y + 6, weight is { } known ? Numerals.Fixed(known.Value * count, 2) : "unknown", "end");
        }
        y += Step + 8;
        canvas.Text(x, y, $"planned when new {Percent(fill.Planned(designed.Plan.Standards).Value * 100)}, at the end of its life "
            + Percent(fill.Most(designed.Plan.Standards).Value * 100), "small soft");
        canvas.Text(x, y + 16, "Gaps between round cables take the rest: a calculated half looks full.", "small soft");
        canvas.Text(x, y + 32, "Work on ladders and under loads is for trained persons; nobody stands on a tray.", "small soft");
    }

    private string WeightWords()
    {
        var bears = fill.Pathway.LoadRating is { } rating ? $" of {Numerals.Plain(rating)}" : "";
        return $"{Numerals.Fixed(fill.KilogramsAMetre, 2)}{bears} kg/m [{fill.WeightKnown}]";
    }

    private static string Percent(double percent) => Numerals.Fixed(percent, 1) + " %";
}
