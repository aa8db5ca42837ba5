using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabrics;

/// <summary>A break-even chart: the least price over the years against one quantity, and which option has it where.</summary>
public static class BreakEvenChart
{
    private const double Left = 120;
    private const double Right = Sheet.Width - Sheet.Margin - 20;
    private const double PlotTop = Sheet.Top + 26;
    private const double PlotBottom = PlotTop + 300;
    private const double BandTop = PlotBottom + 44;
    private const double BandHeight = 22;
    private const double ListTop = BandTop + BandHeight + 44;
    private const double LetterWidth = 12;
    private const double ListStep = 17;

    /// <summary>Name of the file of a chart.</summary>
    public static string Name(BreakEvenQuantity quantity) => "break-even-" + BreakEvenWords.Key(quantity);

    /// <summary>Writes a chart.</summary>
    /// <param name="markup">Where to.</param>
    /// <param name="plan">The plan the question was asked in.</param>
    /// <param name="breakEven">What to draw; some stretch of it has an option.</param>
    /// <param name="isFile">Whether it is a file of its own rather than a part of a page.</param>
    public static void Write(MarkupWriter markup, Plan plan, BreakEven breakEven, bool isFile)
    {
        var title = BreakEvenWords.Title(breakEven.Quantity, plan.Currency);
        var head = new SheetHead(
            Name(breakEven.Quantity), "What would change the answer: " + title, Subtitle(breakEven), Description(breakEven, plan));
        var now = BreakEvenWords.Value(breakEven.Quantity, breakEven.Now);
        var block = TitleBlock.Of(plan, plan.Name, ("quantity", BreakEvenWords.Key(breakEven.Quantity), 2), ("now", now, 1.4),
            ("prices in", plan.Currency, 1.2));
        var told = BreakEvenTurns.Told(breakEven);
        Sheet.Write(markup, head, block, ListTop + (told.Length * ListStep), isFile, canvas =>
        {
            var scale = new BreakEvenScale(breakEven, Left, Right, PlotTop, PlotBottom);
            Axes(canvas, scale, breakEven, plan.Currency);
            Lines(canvas, scale, breakEven, told);
            Band(canvas, scale, told);
            List(canvas, breakEven.Quantity, told, plan.Currency);
        });
    }

    private static string Subtitle(BreakEven breakEven) => Changes(breakEven)
        + (breakEven.IsChain
            ? ""
            : " The price goes in steps; the dots are where it was asked, and lines join them.");

    private static string Changes(BreakEven breakEven) => BreakEvenTurns.Changes(breakEven) switch
    {
        0 => "The same option is the cheapest over the whole range.",
        var changes => $"The cheapest option changes {Numerals.Whole(changes)} {(changes == 1 ? "time" : "times")} over the range; "
            + "everything else as asked.",
    };

    private static string Description(BreakEven breakEven, Plan plan) =>
        string.Join(" ", BreakEvenTurns.Told(breakEven).Select(s => Sentence(breakEven.Quantity, s, plan.Currency)));

    private static string Sentence(BreakEvenQuantity quantity, BreakEvenStretch stretch, string currency) =>
        $"From {BreakEvenWords.Value(quantity, stretch.From)} to {BreakEvenWords.Value(quantity, stretch.To)}: "
        + (stretch.Shape is null
            ? "nothing fits."
            : $"{BreakEvenWords.Cheapest(stretch)}, {BreakEvenWords.Cost(stretch)} {currency}.");

    private static void Axes(Canvas canvas, BreakEvenScale scale, BreakEven breakEven, string currency)
    {
        canvas.Text(Left, PlotTop - 12, currency + " over the years", "small soft");
        foreach (var tick in scale.MoneyTicks)
        {
            canvas.Line(Left, scale.Y(tick), Right, scale.Y(tick), "faint");
            canvas.Text(Left - 8, scale.Y(tick) + 4, Numerals.Grouped(tick), "small end");
        }
        canvas.Line(Left, PlotBottom, Right, PlotBottom, "ink");
        if (scale.Least > 0) canvas.Text(Right, PlotTop - 12, "the upright scale does not begin at nothing", "small soft end");
        foreach (var tick in scale.ValueTicks)
        {
            canvas.Line(scale.X(tick), PlotBottom, scale.X(tick), PlotBottom + 5, "fine");
            canvas.Text(scale.X(tick), PlotBottom + 19, BreakEvenWords.Value(breakEven.Quantity, tick), "small mid");
        }
    }

    private static void Lines(Canvas canvas, BreakEvenScale scale, BreakEven breakEven, ImmutableArray<BreakEvenStretch> told)
    {
        foreach (var stretch in told.Where(s => s.Shape is not null))
        {
            (decimal Value, Money Cost)[] points =
                [(stretch.From, stretch.CostFrom), .. stretch.Between, (stretch.To, stretch.CostTo)];
            foreach (var (from, to) in points.Zip(points.Skip(1)))
                canvas.Line(scale.X(from.Value), scale.Y(from.Cost.Units), scale.X(to.Value), scale.Y(to.Cost.Units), "heavy");
            if (!breakEven.IsChain)
                foreach (var point in points) canvas.Circle(scale.X(point.Value), scale.Y(point.Cost.Units), 2.4, "full");
        }
        foreach (var corner in told.Skip(1))
            Upright(canvas, scale.X(corner.From), "fine broken");
        var now = scale.X(breakEven.Now);
        Upright(canvas, now, "act");
        var atRight = now > Right - 60;
        canvas.Text(now + (atRight ? -6 : 6), PlotTop + 17, "now", atRight ? "alert end halo" : "alert halo");
    }

    /// <summary>A line through the plot and the band that leaves the figures between them readable.</summary>
    private static void Upright(Canvas canvas, double x, string style)
    {
        canvas.Line(x, PlotTop, x, PlotBottom, style);
        canvas.Line(x, BandTop - 14, x, BandTop + BandHeight, style);
    }

    /// <summary>Which option wins where: letters that the list below explains. What is not proven is dashed; a letter that finds no room in
    /// its stretch stands below with a leader.</summary>
    private static void Band(Canvas canvas, BreakEvenScale scale, ImmutableArray<BreakEvenStretch> told)
    {
        var below = Left;
        for (var i = 0; i < told.Length; i++)
        {
            var (from, to) = (scale.X(told[i].From), scale.X(told[i].To));
            canvas.Box(from, BandTop, Math.Max(0, to - from), BandHeight, i % 2 == 0 ? "block" : "box");
            if (!told[i].IsProven) canvas.Line(from, BandTop + BandHeight + 3, to, BandTop + BandHeight + 3, "fine broken");
            var middle = (from + to) / 2;
            if (to - from > LetterWidth)
            {
                canvas.Text(middle, BandTop + 15, Letter(i), "mid bold");
                continue;
            }
            var at = Math.Max(middle, below);
            below = at + LetterWidth;
            canvas.Line(middle, BandTop + BandHeight, at, BandTop + BandHeight + 9, "fine");
            canvas.Text(at, BandTop + BandHeight + 20, Letter(i), "mid bold small");
        }
    }

    private static void List(Canvas canvas, BreakEvenQuantity quantity, ImmutableArray<BreakEvenStretch> told, string currency)
    {
        for (var i = 0; i < told.Length; i++)
        {
            var y = ListTop + (i * ListStep);
            canvas.Text(Sheet.Margin, y, Letter(i), "bold");
            var words = Sentence(quantity, told[i], currency);
            canvas.Text(Sheet.Margin + 22, y, TextFit.Short(words, Right - Sheet.Margin - 22, 12));
        }
    }

    private static string Letter(int stretch) => ((char)('A' + stretch)).ToString();
}
