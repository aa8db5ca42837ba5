using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>What every single failure does, sorted from the worst: a step a class, as wide as the class is large.</summary>
internal static class FailureDrawing
{
    private const double Left = 92;
    private const double Right = Sheet.Width - Sheet.Margin;
    private const double PlotTop = Sheet.Top + 30;
    private const double PlotBottom = PlotTop + 300;
    private const double RowStep = 18;
    private const double LeastForWord = 12;
    private const double RoomForWord = 52;
    private const double DarkFrom = 0.42;
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
        var steps = Joined(all);
        var plan = study.Fabric.Map.Plan;
        var worst = all[0];
        var head = new SheetHead(id + "-failures", $"Single failures under '{study.Demand.Name}'",
            $"{LoadWords.About(study)} {Numerals.Grouped(all.Sum(s => s.Size))} failures; "
                + "each step as wide as the logarithm of how many are alike.",
            string.Join("; ", steps.Take(MostRows).Select(Words)) + ".");
        var block = TitleBlock.Of(plan, study.Demand.Name,
            ("demand", study.Demand.Name, 2.4), ("split", LoadWords.Split(study.Fabric.Rule), 1.6),
            ("while all works", LoadWords.Percent(study.Intact), 1.5),
            ("worst", LoadWords.Percent(worst.Utilisation), 1.2));
        var rows = Math.Min(steps.Length, MostRows);
        var bottom = PlotBottom + 62 + (rows * RowStep);
        Sheet.Write(markup, head, block, bottom, isFile, canvas =>
        {
            Plot(canvas, study, steps);
            Table(canvas, steps, PlotBottom + 56);
        });
    }

    /// <summary>More steps than can be told apart are joined at the harmless end.</summary>
    private static ImmutableArray<FailureStep> Joined(ImmutableArray<FailureStep> steps)
    {
        if (steps.Length <= MostSteps) return steps;
        var rest = steps.Skip(MostSteps - 1).ToList();
        return [.. steps.Take(MostSteps - 1), rest[0] with { Size = rest.Sum(s => s.Size), Example = rest[0].Example + " and others" }];
    }

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
        canvas.Text(Right - 4, Y(intact) - 5, "while all works", "small soft halo end");
        canvas.Line(Left, Y(limit), Right, Y(limit), "act");
        canvas.Text(Right - 4, Y(limit) - 6, $"limit {LoadWords.Percent(Share.From(limit))}", "small alert halo end");
    }

    private static void Steps(Canvas canvas, DemandStudy study, ImmutableArray<FailureStep> steps, Func<double, double> y)
    {
        var limit = study.Fabric.Policy.MostUtilisation.Value + LoadWords.Rounding;
        var weights = steps.Select(s => 1 + Math.Log10(s.Size)).ToList();
        var unit = (Right - Left) / weights.Sum();
        var x = Left;
        for (var i = 0; i < steps.Length; i++)
        {
            var (step, width) = (steps[i], weights[i] * unit);
            var top = y(step.Utilisation.Value);
            var gap = Math.Min(2, width / 8);
            canvas.Filled(x, top, width - gap, PlotBottom - top,
                step.Utilisation.Value > limit ? DrawingStyle.Accent : LoadColour.Of(step.Utilisation));
            canvas.Line(x, top, x + width - gap, top, "ink");
            if (width >= 15) canvas.Text(x + (width / 2), PlotBottom + 16, Numerals.Whole(i + 1), "small mid");
            Word(canvas, step, x + ((width - gap) / 2), width, top);
            if (step.HostsCut > 0) canvas.Circle(x + ((width - gap) / 2), top - 8, 3.2, "actfill");
            x += width;
        }
        canvas.Text(Left, PlotTop - 8, "fullest link between switches after the failure", "small soft");
        if (!steps.Any(s => s.HostsCut > 0)) return;
        canvas.Circle(Right - 150, PlotTop - 12, 3.2, "actfill");
        canvas.Text(Right - 142, PlotTop - 8, "cuts hosts off", "small soft");
    }

    /// <summary>The kind stands in its bar, or over it where the bar is too low.</summary>
    private static void Word(Canvas canvas, FailureStep step, double x, double width, double top)
    {
        if (width < LeastForWord) return;
        var isIn = PlotBottom - top > RoomForWord;
        var isDark = isIn && step.Utilisation.Value > DarkFrom;
        var word = LoadWords.Failure(step.Kind);
        if (width >= RoomForWord) canvas.Text(x, isIn ? PlotBottom - 6 : top - 16, word, isDark ? "small light mid" : "small mid");
        else canvas.Upright(x + 3.5, isIn ? PlotBottom - 6 : top - 16, word, isDark ? "small light" : "small");
    }

    private static void Table(Canvas canvas, ImmutableArray<FailureStep> steps, double top)
    {
        double[] at = [Sheet.Margin + 20, Sheet.Margin + 34, 130, 820, 960, 1100];
        string[] style = [" end", "", "", " end", " end", " end"];
        string[] heads = ["", "what fails", "for example", "alike", "fullest link", "hosts cut off"];
        for (var i = 0; i < at.Length; i++) canvas.Text(at[i], top, heads[i], "small soft" + style[i]);
        canvas.Line(Sheet.Margin, top + 6, at[^1], top + 6, "fine");
        for (var row = 0; row < Math.Min(steps.Length, MostRows); row++)
        {
            var (step, y) = (steps[row], top + 4 + ((row + 1) * RowStep));
            string[] cells =
            [
                Numerals.Whole(row + 1), LoadWords.Failure(step.Kind), TextFit.Short(step.Example, at[3] - at[2] - 60, 12),
                Numerals.Grouped(step.Size), LoadWords.Percent(step.Utilisation), step.HostsCut > 0 ? Numerals.Grouped(step.HostsCut) : "",
            ];
            for (var i = 0; i < at.Length; i++) canvas.Text(at[i], y, cells[i], style[i].Trim());
        }
    }
}
