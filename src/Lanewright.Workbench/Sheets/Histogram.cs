using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables.Markup;
using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>How many links have how much margin: a bar a half decibel, each of which picks its links out of the table.</summary>
internal static class Histogram
{
    private const double Step = 0.5;
    private const double Beyond = 1000;
    private const double Lowest = -3;
    private const double Highest = 6;
    private const double Width = 900;
    private const double Height = 118;
    private const double Top = 18;
    private const double Floor = 84;

    /// <summary>Writes it; nothing where no link has a margin.</summary>
    public static void Write(SheetPaper paper, LinkBook book)
    {
        var bars = Bars(book);
        var least = bars.FindIndex(b => b.Links > 0);
        if (least < 0) return;
        bars = bars[Math.Min(least, (int)(-Lowest / Step))..(bars.FindLastIndex(b => b.Links > 0) + 1)];
        var most = bars.Max(b => b.Links);
        var unit = Math.Min(56, (Width - 20) / bars.Count);
        paper.Markup.Open("svg", ("class", "lw margins"), ("viewBox", $"0 0 {MarkupWriter.Number(Width)} {MarkupWriter.Number(Height)}"),
            ("role", "group"), ("aria-label", "links by margin"));
        var canvas = new Canvas(paper.Markup);
        canvas.Text(10, 11, "links by margin of loss, in dB; a bar picks its links", "small soft");
        for (var i = 0; i < bars.Count; i++)
        {
            var (from, below, links) = bars[i];
            var (x, height) = (10 + (i * unit), links == 0 ? 0 : Math.Max(1.5, (Floor - Top - 14) * Math.Sqrt((double)links / most)));
            canvas.Text(x, Floor + 15, Edge(from), "tiny soft mid");
            if (links == 0) continue;
            paper.Markup.Open("a", ("href", paper.Site.Asking("links", MarginTest.Words(from, below))),
                ("aria-label", $"{Numerals.Grouped(links)} links with {Edge(from)} to {Edge(below)} dB"));
            canvas.Box(x + 1, Floor - height, unit - 2, height, below <= 0 ? "actfill" : "shade3");
            canvas.Text(x + (unit / 2), Floor - height - 4, Numerals.Grouped(links), "tiny mid");
            paper.Markup.Close();
        }
        canvas.Text(10 + (bars.Count * unit), Floor + 15, Edge(bars[^1].Below), "tiny soft mid");
        canvas.Line(10, Floor, 10 + (bars.Count * unit), Floor, "ink");
        canvas.Text(10, Height - 4, "heights as the square root, so that few links are seen beside many", "tiny soft");
        paper.Markup.Close();
    }

    private static string Edge(double margin) => margin <= -Beyond ? "less" : margin >= Beyond ? "more" : Numerals.Plain(margin);

    private static List<(double From, double Below, long Links)> Bars(LinkBook book)
    {
        var count = (int)((Highest - Lowest) / Step);
        var links = new long[count];
        foreach (var kind in book.Kinds)
            if (kind.Margin is { } margin) links[(int)Math.Clamp(Math.Floor((margin - Lowest) / Step), 0, count - 1)] += kind.Links;
        // The outermost bars take what lies beyond.
        return
        [
            .. links.Select((n, i) => (
                i == 0 ? -Beyond : Lowest + (i * Step), i == count - 1 ? Beyond : Lowest + ((i + 1) * Step), n)),
        ];
    }
}
