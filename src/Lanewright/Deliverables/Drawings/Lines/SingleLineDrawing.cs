using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Lines;
using Lanewright.Model.Lines;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Lines;

/// <summary>The single-line diagram of a route: what stands at its ends and between, both directions, with devices, ports and cords. It is
/// not to scale.</summary>
internal sealed class SingleLineDrawing(LineSheet sheet, ImmutableArray<LineCord> cords)
{
    private const double Going = Sheet.Top + 122;
    private const double Coming = Going + 44;
    private const double Top = Going - 92;
    private const double Bottom = Coming + 96;
    private const double Room = 330;
    private const double Modules = 64;
    private const double Multiplexers = 172;
    private const double Amplifiers = 236;
    private const double Panels = 290;
    private const double Small = 10.5;

    /// <summary>Spans that are drawn one by one.</summary>
    private const int MostApart = 6;

    /// <summary>Spans, or folded ones, that there is room for.</summary>
    private const int MostShown = 5;

    private readonly LinePointNames names = new(sheet.Plan);

    private LineDesign Design => sheet.Design;

    private LineRoute Route => sheet.Line.Routes[sheet.Route];

    /// <summary>Writes it.</summary>
    public void Write(MarkupWriter markup, bool isFile)
    {
        var head = new SheetHead(sheet.Id("single-line"), $"Single-line diagram of {sheet.Line.Statement.Name}",
            $"{sheet.Words}, not to scale; above from {sheet.Line.Statement.From.Name}, below back", Description());
        Sheet.Write(markup, head, sheet.Block, Bottom + 58, isFile, Draw);
    }

    private void Draw(Canvas canvas)
    {
        var (left, right) = (Sheet.Margin, Sheet.Width - Sheet.Margin);
        canvas.Line(left + Modules, Going, right - Modules, Going, "ink");
        canvas.Line(left + Modules, Coming, right - Modules, Coming, "ink");
        End(canvas, left, 1, sheet.Line.Statement.From.Name, isFirst: true);
        End(canvas, right, -1, sheet.Line.Statement.To.Name, isFirst: false);
        Middle(canvas, left + Room, right - Room);
        var caution = TextFit.Lines(LineCautions.Short, Sheet.Width - (2 * Sheet.Margin), Small, 2);
        canvas.Lines(Sheet.Margin, Bottom + 32, caution, 14, "small soft");
    }

    /// <summary>One end: its frame, modules, multiplexer, amplifiers and panel, from the edge inwards.</summary>
    private void End(Canvas canvas, double edge, int inwards, string site, bool isFirst)
    {
        double At(double distance) => edge + (inwards * distance);
        canvas.Box(Math.Min(edge, At(Room)), Top, Room, Bottom - Top, "fine");
        canvas.Text(Math.Min(edge, At(Room)) + 10, Top + 20, site, "bold");
        var here = cords.Where(c => c.From.Site == site && c.From.Port is not null).ToList();
        var count = Design.Channels.Length;
        canvas.Box(At(Modules) - 48, Going - 26, 96, Coming - Going + 52, "box");
        canvas.Text(At(Modules), Going + 4, $"{Numerals.Whole(count)} x", "small mid");
        canvas.Lines(At(Modules), Coming - 4, Halves(Design.TypeName, 92), 13, "small mid");
        var ports = here.GroupBy(c => names.Device(c.From)).Select(g => $"{g.Key}: {Runs(g.Select(c => names.Port(c.From)))}").ToList();
        Words(canvas, At(Modules), ports.Count > 0 ? string.Join("; ", ports) : "ports not named", 112);
        if (Design.Multiplexes)
        {
            Multiplexer(canvas, At(Multiplexers), inwards);
            Words(canvas, At(Multiplexers), Place("multiplexer line", site), 84);
            if (here.Count > 0)
                canvas.Text((At(Modules) + At(Multiplexers)) / 2 + (inwards * 6), Going - 34, Numbers(here), "small mid soft");
        }
        var (outward, inward) = isFirst ? ("booster", "preamplifier") : ("preamplifier", "booster");
        Amplifier(canvas, At(Amplifiers), Going, 1, outward, isFirst || outward == "preamplifier");
        Amplifier(canvas, At(Amplifiers), Coming, -1, inward, !isFirst || inward == "preamplifier");
        canvas.Box(At(Panels) - 5, Going - 30, 10, Coming - Going + 60, "box");
        Words(canvas, At(Panels), Place("span ", site), 76);
    }

    /// <summary>A name in one line where it fits, otherwise in two, parted behind a hyphen.</summary>
    private static ImmutableArray<string> Halves(string name, double width)
    {
        if (TextFit.Width(name, Small) <= width) return [name];
        var parting = Enumerable.Range(1, name.Length - 1).Where(i => name[i - 1] == '-').DefaultIfEmpty(name.Length)
            .MinBy(i => Math.Max(TextFit.Width(name[..i], Small), TextFit.Width(name[i..], Small)));
        return [TextFit.Short(name[..parting], width, Small), TextFit.Short(name[parting..], width, Small)];
    }

    /// <summary>An amplifier of the line, with its gain where the design reckons it: the way back is built alike.</summary>
    private void Amplifier(Canvas canvas, double x, double y, int pointing, string place, bool isKnown)
    {
        if (!isKnown || Design.Amplifiers.FirstOrDefault(a => a.Place == place) is not { } amplifier) return;
        Triangle(canvas, x, y, pointing);
        if (pointing < 0) return;
        canvas.Text(x, y - 34, place == "preamplifier" ? "preamp" : place, "small mid");
        canvas.Text(x, y - 20, LineSheet.Of(amplifier.Gain.Value, "dB"), "small mid soft");
        if (Pads(amplifier) is { Length: > 0 } pads) canvas.Text(x, y - 48, pads, "small mid soft");
    }

    private static string Pads(LineAmplifier amplifier) =>
        string.Join(", ", amplifier.Pads.Select(p => $"pad {LineSheet.Of(p.Loss.Value, "dB")} {p.Side}"));

    /// <summary>Spans between the ends. Many are folded: those that light passes without an amplifier between are drawn as one, or, where
    /// there are none, pieces of one span of the plan with huts between.</summary>
    private void Middle(Canvas canvas, double left, double right)
    {
        var spans = Design.Spans.IsEmpty ? Route.Answer.Question.Spans : Design.Spans;
        var joints = LineJoint.Of(Route);
        var isFolded = spans.Length > MostApart;
        var parts = Enumerable.Range(0, spans.Length)
            .GroupBy(i => !isFolded ? i
                : joints.Any(j => j.GoesOn) ? joints.Take(i).Count(j => !j.GoesOn)
                : Described(spans[i])?.Index ?? i)
            .Select(g => (First: g.Min(), Count: g.Count())).OrderBy(g => g.First).ToList();
        // Of too many to read the middle ones are told by their number.
        var leftOut = parts.Count > MostShown ? parts.Count - MostShown + 1 : 0;
        var gap = leftOut > 0 ? MostShown / 2 : -1;
        var width = (right - left) / Math.Max(1, parts.Count - Math.Max(0, leftOut - 1));
        for (var i = 0; i < parts.Count; i++)
        {
            var (first, count) = parts[i];
            if (i > gap && i < gap + leftOut) continue;
            var column = i >= gap + leftOut && leftOut > 0 ? i - leftOut + 1 : i;
            var (from, middle) = (left + (column * width), left + ((column + 0.5) * width));
            if (i == gap)
            {
                canvas.Text(middle, Going - 46, $"{Numerals.Whole(leftOut)} more spans", "small bold mid halo");
                continue;
            }
            for (var loop = -1; loop <= 1; loop++)
            {
                canvas.Circle(middle + (loop * 8), Going - 7, 7, "fine");
                canvas.Circle(middle + (loop * 8), Coming - 7, 7, "fine");
            }
            Span(canvas, middle, width, spans[first..(first + count)]);
            if (i == 0) continue;
            var joint = joints.Length >= first ? joints[first - 1] : null;
            canvas.Text(from, Going - 64, TextFit.Short(joint?.Site ?? "hut", width, Small, bold: true), "small bold mid halo");
            if (Design.Amplifiers.FirstOrDefault(a => a.Place == $"in-line {Numerals.Whole(joint?.Amplifier ?? 0)}") is not { } between)
            {
                canvas.Box(from - 4, Going - 12, 8, Coming - Going + 24, "box");
                canvas.Text(from, Coming + 30, "patched", "small mid soft halo");
                continue;
            }
            Triangle(canvas, from, Going, 1);
            Triangle(canvas, from, Coming, -1);
            var gain = TextFit.Short($"{LineSheet.Of(between.Gain.Value, "dB")}, {Pads(between)}".TrimEnd(',', ' '), width, Small);
            canvas.Text(from, Going - 20, gain, "small mid soft halo");
        }
    }

    private void Span(Canvas canvas, double middle, double width, ImmutableArray<LineSpan> group)
    {
        var (described, last, count) = (Described(group[0]), Described(group[^1]), group.Length);
        var isOne = described == last;
        var name = count == 1 ? group[0].Name
            : isOne ? $"{described?.Name} {Numerals.Whole(count)} x"
            : $"{described?.Name} to {last?.Name}, {Numerals.Whole(count)} spans";
        var told = count > 1 && isOne ? group[..1] : group;
        var text = $"{name} {LineSheet.Of(told.Sum(s => s.Length.Kilometres), "km")}, {LineSheet.Of(told.Sum(s => s.Loss.Value), "dB")}";
        canvas.Lines(middle, Going - 46, TextFit.Lines(text, Math.Max(60, width - 40), Small, 2), 13, "small mid");
        var ducts = group.SelectMany(s => Described(s)?.Ducts ?? []).Distinct().ToList();
        var below = ducts.Count > 0 ? "ducts: " + string.Join(", ", ducts) : "";
        if (count > 1 && isOne)
            below = $"amplified in {Numerals.Whole(count - 1)} {(count == 2 ? "hut" : "huts")}; {below}".TrimEnd(' ', ';');
        Words(canvas, middle, below, Math.Max(60, width - 30));
    }

    /// <summary>The span of the plan that a span of the design is, or is a piece of.</summary>
    private FibreSpan? Described(LineSpan span) => Route.Spans.FirstOrDefault(s => s.Name == span.Name)
        ?? Route.Spans.FirstOrDefault(s => span.Name.StartsWith(s.Name + " ", StringComparison.Ordinal));

    private static void Triangle(Canvas canvas, double x, double y, int pointing) => canvas.Path(
        PathText.Of($"M{x - (pointing * 11)} {y - 13}L{x + (pointing * 13)} {y}L{x - (pointing * 11)} {y + 13}Z"), "box");

    private static void Multiplexer(Canvas canvas, double x, int inwards)
    {
        var (wide, narrow) = (x - (inwards * 10), x + (inwards * 10));
        canvas.Path(PathText.Of(
            $"M{wide} {Going - 28}L{narrow} {Going - 10}L{narrow} {Coming + 10}L{wide} {Coming + 28}Z"), "box");
    }

    private static void Words(Canvas canvas, double x, string text, double width)
    {
        if (text.Length > 0) canvas.Lines(x, Coming + 52, TextFit.Lines(text, width, Small, 4), 13, "small mid");
    }

    /// <summary>The device that something of an end stands in, where the plan names one.</summary>
    private string Place(string what, string site)
    {
        var point = cords.SelectMany(c => new[] { c.From, c.To })
            .FirstOrDefault(p => p.Site == site && p.What.StartsWith(what, StringComparison.Ordinal));
        return point is { Device: >= 0 } ? names.Device(point) : what.StartsWith("span", StringComparison.Ordinal) ? "panel" : "mux";
    }

    private static string Numbers(List<LineCord> here) => here.Count == 1
        ? Short(here[0])
        : $"{Short(here[0])} to {Short(here[^1])}";

    private static string Short(LineCord cord) => "C" + Numerals.Padded(cord.Number, 3);

    private static string Runs(IEnumerable<string> ports)
    {
        var all = ports.ToList();
        return all.Count <= 8 ? string.Join(", ", all) : $"{all[0]} to {all[^1]}, {Numerals.Whole(all.Count)} ports";
    }

    private string Description() => $"{Numerals.Whole(Design.Channels.Length)} channels of {Design.TypeName} from "
        + $"{sheet.Line.Statement.From.Name} to {sheet.Line.Statement.To.Name}"
        + string.Concat(Design.Amplifiers.Select(a => $", {a.Place} of {LineSheet.Of(a.Gain.Value, "dB")}"))
        + string.Concat((Design.Spans.IsEmpty ? Route.Answer.Question.Spans : Design.Spans)
            .Select(s => $", span {s.Name} of {LineSheet.Of(s.Length.Kilometres, "km")}")) + ".";
}
