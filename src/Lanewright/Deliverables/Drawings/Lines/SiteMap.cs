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
    private const double Beside = 5;

    private readonly DesignedPlan designed;
    private readonly ImmutableArray<Site> sites;
    private readonly bool isToScale;
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
        var xs = sites.Select(s => X(s)).ToList();
        var ys = sites.Select(s => Y(s)).ToList();
        (west, north) = (xs.Min(), ys.Max());
        var (wide, high) = (Math.Max(xs.Max() - west, 1e-6), Math.Max(north - ys.Min(), 1e-6));
        scale = Math.Min((Sheet.Width - (2 * Inset)) / wide, (MostHeight - 80) / high);
        left = (Sheet.Width - (wide * scale)) / 2;
        height = Math.Max(LeastHeight, (high * scale) + 120);
    }

    /// <summary>Writes it.</summary>
    public void Write(MarkupWriter markup, string id, bool isFile)
    {
        var lines = designed.Lines.Value.Lines;
        var head = new SheetHead(id, "Sites and the fibre between them",
            isToScale ? "To scale; spans are drawn straight, and their true lengths are written beside them."
                : "Not to scale: not every site has a position.", Description());
        var block = TitleBlock.Of(designed.Plan, "sites", ("sites", Numerals.Whole(sites.Length), 0.8),
            ("spans", Numerals.Whole(designed.Plan.Spans.Length), 0.8), ("lines", Numerals.Whole(lines.Length), 0.8),
            ("scale", isToScale ? "by the bar" : "none", 1));
        Sheet.Write(markup, head, block, Sheet.Top + height + 22 + (18 * Legend().Count()), isFile, canvas =>
        {
            foreach (var span in designed.Plan.Spans) Span(canvas, span);
            foreach (var line in lines)
                for (var route = 0; route < line.Routes.Length; route++) Route(canvas, line.Routes[route].Spans, route);
            foreach (var span in designed.Plan.Spans) Label(canvas, span);
            foreach (var site in sites) Mark(canvas, site);
            if (isToScale) ScaleBar(canvas);
            canvas.Lines(Sheet.Margin, Sheet.Top + height + 16, Legend(), 18);
        });
    }

    private double X(Site site) => isToScale ? site.East?.Kilometres ?? 0 : Math.Sin(Angle(site)) * Room / 4;

    private double Y(Site site) => isToScale ? site.North?.Kilometres ?? 0 : Math.Cos(Angle(site)) * MostHeight / 4;

    private double Angle(Site site) => 2 * Math.PI * sites.IndexOf(site) / sites.Length;

    private (double X, double Y) At(Site site) => (left + ((X(site) - west) * scale), Sheet.Top + 50 + ((north - Y(site)) * scale));

    /// <summary>Spans between the same two sites lie side by side.</summary>
    private ((double X, double Y) From, (double X, double Y) To) Ends(FibreSpan span, double off = 0)
    {
        ImmutableArray<FibreSpan> alike = [.. designed.Plan.Spans.Where(s =>
            (s.From == span.From && s.To == span.To) || (s.From == span.To && s.To == span.From))];
        var (a, b) = (At(span.From), At(span.To));
        var length = Math.Max(1, Math.Sqrt(Math.Pow(b.X - a.X, 2) + Math.Pow(b.Y - a.Y, 2)));
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

    private void Route(Canvas canvas, ImmutableArray<FibreSpan> spans, int route)
    {
        foreach (var span in spans)
        {
            var (a, b) = Ends(span, route == 0 ? 0 : Beside);
            canvas.Line(a.X, a.Y, b.X, b.Y, route == 0 ? "heavy" : "heavy broken");
        }
    }

    private void Label(Canvas canvas, FibreSpan span)
    {
        // Beside the line, on the side that no second route is drawn on.
        var (on, _) = Ends(span);
        var (a, b) = Ends(span, -12);
        var anchor = Math.Abs(a.X - on.X) < Math.Abs(a.Y - on.Y) / 3 ? " mid" : a.X < on.X ? " end" : "";
        var ducts = span.Ducts.IsEmpty ? "" : $" ({string.Join(", ", span.Ducts)})";
        canvas.Text((a.X + b.X) / 2, ((a.Y + b.Y) / 2) + 4,
            TextFit.Short($"{span.Name}, {LineSheet.Of(span.Length.Kilometres, "km")}{ducts}", 240, 10.5), "small halo" + anchor);
    }

    private void Mark(Canvas canvas, Site site)
    {
        var (x, y) = At(site);
        var hasHalls = designed.Plan.Building.Halls.Any(h => h.Site == site.Name);
        if (hasHalls) canvas.Box(x - 8, y - 8, 16, 16, "full");
        else canvas.Circle(x, y, 6, "hollow");
        canvas.Text(x, y + 24, TextFit.Short(site.Name, 160, 12, bold: true), "bold mid halo");
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
        foreach (var line in designed.Lines.Value.Lines)
        {
            var ways = line.Routes.Select((r, i) => $"{(i == 0 ? "bold" : "red")}: {r.Name}, {LineSheet.Of(r.Length.Kilometres, "km")}");
            var left = line.Cuts.Select(c => c.Left.ToString()).FirstOrDefault("0G");
            yield return TextFit.Short(
                $"{line.Statement.Name}, {line.Capacity}: {string.Join("; ", ways)}; left after the worst cut {left}",
                Sheet.Width - (2 * Sheet.Margin), 12);
        }
    }

    private string Description() => string.Join(" ", designed.Plan.Spans.Select(s =>
        $"{s.Name} from {s.From.Name} to {s.To.Name}, {LineSheet.Of(s.Length.Kilometres, "km")}."));
}
