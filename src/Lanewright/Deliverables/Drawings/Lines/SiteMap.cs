using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Model.Lines;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Drawings.Lines;

/// <summary>Sites, spans and the routes of lines: to scale where every site on a span has a position, otherwise in a ring.</summary>
internal sealed class SiteMap
{
    private const double Room = Sheet.Width - (2 * Sheet.Margin) - 240;
    private const double Inset = 120;
    private const double MostHeight = 560;
    private const double LeastHeight = 240;
    /// <summary>From one stroke of a span to the next.</summary>
    private const double Apart = 5;

    /// <summary>Kilometres over which a flat map begins to stretch distances by more than a line is thick.</summary>
    private const double Wide = 1000;

    private readonly DesignedPlan designed;
    private readonly ImmutableArray<Site> sites;
    private readonly bool isToScale;
    private readonly bool isWide;
    private readonly double west;
    private readonly double north;
    private readonly double scale;
    private readonly double height;
    private readonly double left;

    /// <summary>Takes the plan.</summary>
    public SiteMap(DesignedPlan designed)
    {
        this.designed = designed;
        sites = [.. designed.Plan.Building.Sites.Where(s => designed.Plan.Spans.Any(f => f.From == s || f.To == s))];
        isToScale = sites.All(s => s.East is not null && s.North is not null);
        if (!isToScale) sites = Ring();
        var xs = sites.Select(s => X(s)).ToList();
        var ys = sites.Select(s => Y(s)).ToList();
        (west, north) = (xs.Min(), ys.Max());
        var (wide, high) = (Math.Max(xs.Max() - west, 1e-6), Math.Max(north - ys.Min(), 1e-6));
        isWide = isToScale && Math.Max(wide, high) > Wide;
        scale = Math.Min((Sheet.Width - (2 * Inset)) / wide, (MostHeight - 80) / high);
        left = (Sheet.Width - (wide * scale)) / 2;
        height = Math.Max(LeastHeight, (high * scale) + 120);
    }

    /// <summary>Writes it.</summary>
    public void Write(MarkupWriter markup, string id, bool isFile)
    {
        var lines = designed.Lines.Value.Lines;
        var head = new SheetHead(id, "Sites and the fibre between them",
            !isToScale ? "Not to scale: not every site has a position."
                : (isWide ? "About to scale, as far as a flat map of so wide an area can be; " : "To scale; ")
                    + "spans are drawn straight, and their true lengths are written beside them.", Description());
        var block = TitleBlock.Of(designed.Plan, "sites", ("sites", Numerals.Whole(sites.Length), 0.8),
            ("spans", Numerals.Whole(designed.Plan.Spans.Length), 0.8), ("lines", Numerals.Whole(lines.Length), 0.8),
            ("scale", !isToScale ? "none" : isWide ? "about, by the bar" : "by the bar", 1));
        Sheet.Write(markup, head, block, Sheet.Top + height + 22 + (18 * Legend().Count()), isFile, canvas =>
        {
            foreach (var span in designed.Plan.Spans) Span(canvas, span);
            foreach (var stroke in Strokes()) Route(canvas, stroke);
            foreach (var site in sites) Mark(canvas, site);
            Labels(canvas);
            if (isToScale) ScaleBar(canvas);
            canvas.Lines(Sheet.Margin, Sheet.Top + height + 16, Legend(), 18);
        });
    }

    private double X(Site site) => isToScale ? site.East?.Kilometres ?? 0 : Math.Sin(Angle(site)) * Room / 4;

    private double Y(Site site) => isToScale ? site.North?.Kilometres ?? 0 : Math.Cos(Angle(site)) * MostHeight / 4;

    private double Angle(Site site) => 2 * Math.PI * sites.IndexOf(site) / sites.Length;

    /// <summary>Sites without positions in an order in which neighbours over a span follow one another: from an end of a chain along
    /// it.</summary>
    private ImmutableArray<Site> Ring()
    {
        var found = new List<Site>();
        foreach (var start in sites.OrderBy(s => Neighbours(s).Count()))
            for (Site? next = found.Contains(start) ? null : start; next is not null;
                next = Neighbours(next).FirstOrDefault(s => !found.Contains(s)))
                found.Add(next);
        return [.. found];
    }

    private IEnumerable<Site> Neighbours(Site site) => designed.Plan.Spans
        .Where(s => s.From == site || s.To == site).Select(s => s.From == site ? s.To : s.From).Distinct();

    private (double X, double Y) At(Site site) => (left + ((X(site) - west) * scale), Sheet.Top + 50 + ((north - Y(site)) * scale));

    /// <summary>Spans between the same two sites lie side by side.</summary>
    private ((double X, double Y) From, (double X, double Y) To) Ends(FibreSpan span, double off = 0)
    {
        ImmutableArray<FibreSpan> alike = [.. designed.Plan.Spans.Where(s =>
            (s.From == span.From && s.To == span.To) || (s.From == span.To && s.To == span.From))];
        var (a, b) = (At(span.From), At(span.To));
        var length = Math.Max(1, Plane.Distance(a, b));
        var turn = span.From == alike[0].From ? 1 : -1;
        var aside = (((alike.IndexOf(span) - ((alike.Length - 1) / 2.0)) * 26) + off) * turn;
        var (dx, dy) = (-(b.Y - a.Y) / length * aside, (b.X - a.X) / length * aside);
        return ((a.X + dx, a.Y + dy), (b.X + dx, b.Y + dy));
    }

    private void Span(Canvas canvas, FibreSpan span)
    {
        var (a, b) = Ends(span);
        canvas.Line(a.X, a.Y, b.X, b.Y, "fine");
    }

    /// <summary>Every line and route on every span it goes over, side by side with the others there.</summary>
    private IEnumerable<(FibreSpan Span, int Line, int Route, double Off)> Strokes()
    {
        var all = designed.Lines.Value.Lines.SelectMany((line, l) => line.Routes.SelectMany((r, route) =>
            r.Spans.Select(span => (Span: span, Line: l, Route: route))));
        foreach (var there in all.GroupBy(s => s.Span))
        {
            var count = there.Count();
            foreach (var (stroke, i) in there.Select((s, i) => (s, i)))
                yield return (stroke.Span, stroke.Line, stroke.Route, (i - ((count - 1) / 2.0)) * Apart);
        }
    }

    private void Route(Canvas canvas, (FibreSpan Span, int Line, int Route, double Off) stroke)
    {
        var (a, b) = Ends(stroke.Span, stroke.Off);
        canvas.Line(a.X, a.Y, b.X, b.Y, stroke.Route == 0 ? "heavy" : "heavy broken");
        // With one line there is nothing to tell apart.
        if (designed.Lines.Value.Lines.Length < 2) return;
        var share = TagAt + (TagStep * (stroke.Line % MostTags));
        canvas.Text(a.X + (share * (b.X - a.X)), a.Y + (share * (b.Y - a.Y)) + 4, Letter(stroke.Line), "tiny bold mid halo");
    }

    private const double TagAt = 0.2;
    private const double TagStep = 0.06;
    private const int MostTags = 10;

    /// <summary>The letters of a line on the map: A to Z, then AA and so on.</summary>
    private static string Letter(int line) =>
        line < Alphabet ? ((char)('A' + line)).ToString() : Letter((line / Alphabet) - 1) + Letter(line % Alphabet);

    private const int Alphabet = 26;

    private void Mark(Canvas canvas, Site site)
    {
        var (x, y) = At(site);
        var half = HalfOf(site);
        if (designed.Plan.Building.Halls.Any(h => h.Site == site.Name)) canvas.Box(x - half, y - half, 2 * half, 2 * half, "full");
        else canvas.Circle(x, y, half * 0.75, "hollow");
    }

    /// <summary>Half the size of a mark: sites that lie close by one another have small ones, with the span between in sight.</summary>
    private double HalfOf(Site site)
    {
        var nearest = sites.Where(s => s != site).Select(s => Plane.Distance(At(site), At(s)))
            .DefaultIfEmpty(double.PositiveInfinity).Min();
        return Math.Clamp(nearest * 0.3, 2.5, 8);
    }

    /// <summary>Names of sites first, then spans that lines use, then the others as far as there is room.</summary>
    private void Labels(Canvas canvas)
    {
        var room = new LabelRoom(new LabelBox(Sheet.Margin, Sheet.Top, Sheet.Width - Sheet.Margin, Sheet.Top + height - 20));
        foreach (var site in sites) room.Take(LabelBox.About(At(site).X, At(site).Y, 16, 16));
        foreach (var span in designed.Plan.Spans) room.Take(Ends(span).From, Ends(span).To);
        foreach (var site in sites) Name(canvas, room, site);
        var used = designed.Lines.Value.Lines.SelectMany(l => l.Routes).SelectMany(r => r.Spans).ToHashSet();
        var unnamed = 0;
        foreach (var span in designed.Plan.Spans.OrderBy(s => !used.Contains(s)))
            if (!Label(canvas, room, span)) unnamed++;
        if (unnamed == 0) return;
        var many = unnamed == 1 ? "1 span has" : $"{Numerals.Whole(unnamed)} spans have";
        canvas.Text(Sheet.Width - Sheet.Margin, Sheet.Top + height - 6,
            $"{many} no room for a label; spans.csv lists all", "small soft end");
    }

    private void Name(Canvas canvas, LabelRoom room, Site site)
    {
        var (x, y) = At(site);
        var text = TextFit.Short(site.Name, 160, 12, bold: true);
        var (wide, high) = (TextFit.Width(text, 12, bold: true), 15.0);
        // Below, above, beside, and aslant.
        (double X, double Y)[] aside = [(0, 1), (0, -1), (1, 0), (-1, 0), (1, 1), (-1, 1), (1, -1), (-1, -1)];
        // Near by where there is room, otherwise farther out with a line that leads to it.
        var places = new double[] { 0, 18, 36, 60 }.SelectMany(far => aside.Select(a => LabelBox.About(
            x + (a.X * ((wide / 2) + 11 + far)), y + (a.Y * ((a.X == 0 ? 19 : 14) + far)), wide, high))).ToList();
        // A name is never left out: without room it stands below, over whatever is there.
        var place = room.Place(places) ?? places[0];
        if (places.IndexOf(place) >= aside.Length) Leader(canvas, place, (x, y));
        canvas.Text(place.Middle.X, place.Middle.Y + 5, text, "bold mid halo");
    }

    /// <summary>A thin line from a label to what it names.</summary>
    private static void Leader(Canvas canvas, LabelBox label, (double X, double Y) to)
    {
        var (x, y) = (Math.Clamp(to.X, label.Left, label.Right), Math.Clamp(to.Y, label.Top, label.Bottom));
        canvas.Line(x, y, to.X, to.Y, "faint");
    }

    /// <summary>Writes the label of a span where there is room beside it; whether there was.</summary>
    private bool Label(Canvas canvas, LabelRoom room, FibreSpan span)
    {
        var ducts = span.Ducts.IsEmpty ? "" : $" ({string.Join(", ", span.Ducts)})";
        foreach (var words in new[] { $"{span.Name}, {LineSheet.Of(span.Length.Kilometres, "km")}{ducts}", span.Name })
        {
            var text = TextFit.Short(words, 240, 10.5);
            var places = Beside(span, TextFit.Width(text, 10.5), 14).ToList();
            if (room.Place(places.Select(p => p.Box)) is not { } place) continue;
            if (places.First(p => p.Box == place) is { IsFar: true } far) Leader(canvas, place, far.At);
            canvas.Text(place.Middle.X, place.Middle.Y + 4, text, "small mid halo");
            return true;
        }
        return false;
    }

    /// <summary>Places along a span on both sides, from its middle on, clear of the routes drawn on it: close by, and then farther
    /// off.</summary>
    private IEnumerable<(LabelBox Box, (double X, double Y) At, bool IsFar)> Beside(FibreSpan span, double wide, double high)
    {
        var (a, b) = Ends(span);
        var length = Math.Max(1, Plane.Distance(a, b));
        var (across, up) = (-(b.Y - a.Y) / length, (b.X - a.X) / length);
        var strokes = Strokes().Count(s => s.Span == span);
        var clear = (Math.Abs(across) * wide / 2) + (Math.Abs(up) * high / 2) + (Math.Max(2, strokes) * Apart / 2) + 3;
        foreach (var farther in new double[] { 0, 16, 34 })
        {
            foreach (var share in new[] { 0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8 })
            {
                var (x, y) = (a.X + (share * (b.X - a.X)), a.Y + (share * (b.Y - a.Y)));
                foreach (var off in new[] { -clear - farther, clear + farther })
                    yield return (LabelBox.About(x + (off * across), y + (off * up), wide, high), (x, y), farther > 0);
            }
        }
    }

    private void ScaleBar(Canvas canvas)
    {
        var step = new[] { 1.0, 2, 5, 10, 20, 50, 100, 200, 500, 1000 }.Last(s => s == 1 || s * scale <= Room / 4);
        var y = Sheet.Top + height - 6;
        canvas.Line(Sheet.Margin, y, Sheet.Margin + (step * scale), y, "heavy");
        canvas.Text(Sheet.Margin, y - 8, $"{Numerals.Plain(step)} km", "small");
    }

    private IEnumerable<string> Legend()
    {
        foreach (var (line, number) in designed.Lines.Value.Lines.Select((l, i) => (l, i)))
        {
            var tag = designed.Lines.Value.Lines.Length > 1 ? Letter(number) + " " : "";
            var ways = line.Routes.Select((r, i) =>
                $"{(i == 0 ? "solid" : "broken")}: {r.Name}, {LineSheet.Of(r.Length.Kilometres, "km")}");
            var left = line.Capacity == default
                ? "no route passes, so that it carries nothing"
                : $"{line.Capacity}; left after the worst cut {line.Cuts.Select(c => c.Left.ToString()).FirstOrDefault("nothing")}";
            yield return TextFit.Short(
                $"{tag}{line.Statement.Name}: {string.Join("; ", ways)}; {left}",
                Sheet.Width - (2 * Sheet.Margin), 12);
        }
    }

    private string Description() => string.Join(" ", designed.Plan.Spans.Select(s =>
        $"{s.Name} from {s.From.Name} to {s.To.Name}, {LineSheet.Of(s.Length.Kilometres, "km")}."));
}
