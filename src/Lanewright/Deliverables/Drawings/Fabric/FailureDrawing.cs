using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>What every single failure does, what fills a link most first: a step a class, as wide as the class is large. Above the line how
/// full the fullest link then is, below it the hosts that are cut off.</summary>
internal static class FailureDrawing
{
    private const double Left = 92;
    private const double Right = Sheet.Width - Sheet.Margin - 92;
    private const double PlotTop = Sheet.Top + 30;
    private const double PlotBottom = PlotTop + 250;
    private const double CutTop = PlotBottom + 24;
    private const double CutHeight = 64;
    private const double RowStep = 18;
    private const double LeastForWord = 12;
    private const double RoomForWord = 52;

    /// <summary>Colours of loads between these are too near to both inks, on light paper or on dark, for a word to stand on them.</summary>
    private const double LightUntil = 0.325;
    private const double DarkFrom = 0.575;

    private const double LabelStep = 13;
    private const int MostRows = 14;
    private const int MostSteps = 60;

    /// <summary>Whether there is anything to draw.</summary>
    public static bool CanDraw(DemandStudy study) => study.Sweep is { Classes.IsEmpty: false };

    /// <summary>Writes it.</summary>
    /// <param name="markup">Where to.</param>
    /// <param name="study">The demand and what came of it.</param>
    /// <param name="id">Its identifier.</param>
    /// <param name="isFile">Whether it is a file of its own rather than a part of a page.</param>
    public static void Write(MarkupWriter markup, DemandStudy study, string id, bool isFile)
    {
        var all = FailureStep.Of(study);
        var steps = FailureStep.ByFullest(Joined(all));
        var rows = FailureStep.Telling(all, MostRows);
        var mostCut = all.Max(s => s.HostsCut);
        var plan = study.Fabric.Map.Plan;
        var head = new SheetHead(id + "-failures", $"Single failures under '{study.Demand.Name}'",
            $"{LoadWords.About(study)} {Numerals.Grouped(all.Sum(s => s.Size))} failures, the fullest link first; "
                + "each step as wide as the logarithm of how many are alike.",
            string.Join("; ", FailureStep.ByFullest(rows).Select(Words)) + ". " + LeftOut(all, rows));
        var block = TitleBlock.Of(plan, study.Demand.Name,
            ("demand", study.Demand.Name, 2), ("split", LoadWords.Split(study.Fabric.Rule), 1.2),
            ("while all works", LoadWords.Percent(study.Intact), 1.3),
            ("fullest after one failure", LoadWords.Percent(all.Max(s => s.Utilisation)), 1.7),
            ("most hosts cut off", Numerals.Grouped(mostCut), 1.5));
        var below = mostCut > 0 ? CutTop + CutHeight : PlotBottom;
        var bottom = below + 66 + ((rows.Length + (rows.Length < all.Length ? 1 : 0)) * RowStep);
        Sheet.Write(markup, head, block, bottom, isFile, canvas =>
        {
            Plot(canvas, study, steps);
            if (mostCut > 0) Cut(canvas, steps);
            Table(canvas, [.. steps.Select((s, i) => (i + 1, s)).Where(n => rows.Contains(n.s))], LeftOut(all, rows), below + 56);
        });
    }

    /// <summary>What the table does not list, so that nobody takes its end for the end of what can fail.</summary>
    private static string LeftOut(ImmutableArray<FailureStep> all, ImmutableArray<FailureStep> rows)
    {
        var rest = all.Except(rows).ToList();
        if (rest.Count == 0) return "";
        var cut = rest.Max(s => s.HostsCut);
        return $"Not listed: {Numerals.Grouped(rest.Sum(s => s.Size))} failures of {Numerals.Whole(rest.Count)} more steps; "
            + (cut > 0 ? $"none cuts off more than {Numerals.Grouped(cut)} hosts" : "they cut nobody off")
            + $", and the fullest link is {LoadWords.Percent(rest.Max(s => s.Utilisation))} full.";
    }

    /// <summary>More steps than can be told apart are joined at the harmless end.</summary>
    private static ImmutableArray<FailureStep> Joined(ImmutableArray<FailureStep> steps)
    {
        if (steps.Length <= MostSteps) return steps;
        var kept = FailureStep.Telling(steps, MostSteps - 1);
        return [.. kept, Sum([.. steps.Except(kept)])];
    }

    private static FailureStep Sum(List<FailureStep> rest) => rest[0] with
    {
        Size = rest.Sum(s => s.Size), Example = rest[0].Example + " and others", Utilisation = rest.Max(s => s.Utilisation),
        HostsCut = rest.Max(s => s.HostsCut),
    };

    private static string Words(FailureStep step) =>
        $"{LoadWords.Failure(step.Kind)} {step.Example}, {step.Size} alike: {LoadWords.Percent(step.Utilisation)}"
        + (step.HostsCut > 0 ? $", {step.HostsCut} hosts cut off" : "");

    private static void Plot(Canvas canvas, DemandStudy study, ImmutableArray<FailureStep> steps)
    {
        var limit = study.Fabric.Policy.MostUtilisation.Value;
        var most = Math.Max(1.1, Math.Max(limit, steps.Max(s => s.Utilisation.Value)) * 1.08);
        double Y(double utilisation) => PlotBottom - (utilisation / most * (PlotBottom - PlotTop));
        var unit = most <= 2.2 ? 0.2 : most <= 5.5 ? 0.5 : Math.Ceiling(most / 10);
        for (var tick = 0; tick * unit <= most; tick++)
        {
            var y = Y(tick * unit);
            canvas.Line(Left, y, Right, y, "faint dots");
            canvas.Text(Left - 9, y + 4, LoadWords.Percent(Share.From(tick * unit)), "small end");
        }
        canvas.Line(Left, PlotTop, Left, PlotBottom, "ink");
        canvas.Line(Left, PlotBottom, Right, PlotBottom, "ink");
        Steps(canvas, study, steps, Y);
        var intact = study.Intact.Value;
        canvas.Line(Left, Y(intact), Right, Y(intact), "fine broken");
        canvas.Line(Left, Y(limit), Right, Y(limit), "act");
        // Beside the plot, where no bar stands; the two are kept a line apart.
        var (works, bound) = (Y(intact), Y(limit));
        if (Math.Abs(works - bound) < LabelStep) works = works >= bound ? bound + LabelStep : bound - LabelStep;
        canvas.Text(Right + 8, works + 4, "while all works", "small soft");
        canvas.Text(Right + 8, bound + 4, $"limit {LoadWords.Percent(Share.From(limit))}", "small alert");
    }

    /// <summary>Hosts cut off hang below the line.</summary>
    private static void Cut(Canvas canvas, ImmutableArray<FailureStep> steps)
    {
        var most = (double)steps.Max(s => s.HostsCut);
        canvas.Text(Left - 9, CutTop + 4, "0", "small end");
        canvas.Text(Left - 9, CutTop + CutHeight + 4, Numerals.Grouped((decimal)most), "small end");
        canvas.Line(Left, CutTop, Right, CutTop, "fine");
        canvas.Line(Left, CutTop + CutHeight, Right, CutTop + CutHeight, "faint dots");
        canvas.Text(Right + 8, CutTop + (CutHeight / 2), "hosts cut off,", "small alert");
        canvas.Text(Right + 8, CutTop + (CutHeight / 2) + LabelStep, "or down", "small alert");
        foreach (var (step, x, width) in Placed(steps))
            if (step.HostsCut > 0) canvas.Filled(x, CutTop, width, Math.Max(2, step.HostsCut / most * CutHeight), DrawingStyle.Accent);
    }

    /// <summary>Where each step stands, and how wide it is without the gap after it.</summary>
    private static IEnumerable<(FailureStep Step, double X, double Width)> Placed(ImmutableArray<FailureStep> steps)
    {
        var weights = steps.Select(s => 1 + Math.Log10(s.Size)).ToList();
        var unit = (Right - Left) / weights.Sum();
        var x = Left;
        for (var i = 0; i < steps.Length; i++)
        {
            var width = weights[i] * unit;
            yield return (steps[i], x, width - Math.Min(2, width / 8));
            x += width;
        }
    }

    private static void Steps(Canvas canvas, DemandStudy study, ImmutableArray<FailureStep> steps, Func<double, double> y)
    {
        var limit = study.Fabric.Policy.MostUtilisation.Value + LoadWords.Rounding;
        double[] lines = [.. new[] { study.Intact.Value, study.Fabric.Policy.MostUtilisation.Value }.Select(y).OrderDescending()];
        var number = 0;
        foreach (var (step, x, width) in Placed(steps))
        {
            number++;
            var top = y(step.Utilisation.Value);
            canvas.Filled(x, top, width, PlotBottom - top,
                step.Utilisation.Value > limit ? DrawingStyle.Accent : LoadColour.Of(step.Utilisation));
            canvas.Line(x, top, x + width, top, "ink");
            if (width >= 15) canvas.Text(x + (width / 2), PlotBottom + 16, Numerals.Whole(number), "small mid");
            if (number > 1) Word(canvas, step, x + (width / 2), width, top, lines);
        }
        Worst(canvas, steps[0], y(steps[0].Utilisation.Value), lines);
        canvas.Text(Left, PlotTop - 8, "fullest link between switches after the failure", "small soft");
    }

    /// <summary>The highest bar says what it is, also where it is too narrow for a number.</summary>
    private static void Worst(Canvas canvas, FailureStep step, double top, double[] lines)
    {
        var words = $"1  {LoadWords.Failure(step.Kind)} {step.Example}: {LoadWords.Percent(step.Utilisation)}"
            + (step.Size > 1 ? $", {Numerals.Grouped(step.Size)} alike" : "");
        canvas.Text(Left + 3, Clear(top - 6, WordHigh, lines), TextFit.Short(words, Right - Left, WordHigh, bold: true), "small bold halo");
    }

    /// <summary>The kind stands in its bar, or over it where the bar is too low or would hide it.</summary>
    private static void Word(Canvas canvas, FailureStep step, double x, double width, double top, double[] lines)
    {
        if (width < LeastForWord) return;
        var isIn = PlotBottom - top > RoomForWord && step.Utilisation.Value is not (> LightUntil and <= DarkFrom);
        var isDark = isIn && step.Utilisation.Value > DarkFrom;
        var word = LoadWords.Failure(step.Kind);
        var isFlat = width >= RoomForWord;
        var foot = isIn ? PlotBottom - 6 : Clear(top - 16, isFlat ? WordHigh : TextFit.Width(word, WordHigh), lines);
        if (isFlat) canvas.Text(x, foot, word, isDark ? "small light mid" : "small mid");
        else canvas.Upright(x + 3.5, foot, word, isDark ? "small light" : "small");
    }

    /// <summary>A word that a line of the plot would strike through stands above the line; lines come from the lowest up.</summary>
    private static double Clear(double foot, double high, double[] lines)
    {
        foreach (var line in lines)
            if (foot > line - WordClear && foot - high < line + WordClear) foot = line - WordClear;
        return foot;
    }

    private const double WordHigh = 10.5;
    private const double WordClear = 5;

    private static void Table(Canvas canvas, ImmutableArray<(int Number, FailureStep Step)> steps, string leftOut, double top)
    {
        double[] at = [Sheet.Margin + 20, Sheet.Margin + 34, 130, 720, 850, 990, 1120];
        string[] style = [" end", "", "", " end", " end", " end", " end"];
        string[] heads = ["", "what fails", "for example", "alike", "hosts cut off", "traffic lost", "fullest link"];
        for (var i = 0; i < at.Length; i++) canvas.Text(at[i], top, heads[i], "small soft" + style[i]);
        canvas.Line(Sheet.Margin, top + 6, at[^1], top + 6, "fine");
        for (var row = 0; row < steps.Length; row++)
        {
            var ((number, step), y) = (steps[row], top + 4 + ((row + 1) * RowStep));
            string[] cells =
            [
                Numerals.Whole(number), LoadWords.Failure(step.Kind), TextFit.Short(step.Example, at[3] - at[2] - 60, 12),
                Numerals.Grouped(step.Size), step.HostsCut > 0 ? Numerals.Grouped(step.HostsCut) : "",
                step.LostGigabits > 0 ? Numerals.Shown(step.LostGigabits, "Gb/s") : "", LoadWords.Percent(step.Utilisation),
            ];
            for (var i = 0; i < at.Length; i++) canvas.Text(at[i], y, cells[i], style[i].Trim());
        }
        canvas.Text(Sheet.Margin + 34, top + 6 + ((steps.Length + 1) * RowStep), leftOut, "small soft");
    }
}
