using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;

namespace Lanewright.Deliverables.Drawings.Lines;

/// <summary>The smallest margin of a line over its length, its channels and its launch: how far it is from the edge in each
/// direction.</summary>
/// <param name="head">What it is.</param>
/// <param name="block">Its title block.</param>
/// <param name="answer">The line.</param>
/// <param name="sweeps">What is drawn, a panel each.</param>
internal sealed class SweepDrawing(SheetHead head, TitleBlock block, LineAnswer answer, ImmutableArray<LineSweep> sweeps)
{
    private const double Gap = 62;
    private const double MostWidth = 620;
    private const double Top = Sheet.Top + 30;
    private const double Bottom = Top + 270;

    /// <summary>The drawing of a route; null where nothing can be swept.</summary>
    public static SweepDrawing? Of(LineSheet sheet)
    {
        var answer = sheet.Line.Routes[sheet.Route].Answer;
        var sweeps = Shown(LineSweep.Quantities.Select(q => LineSweep.Over(answer, q)));
        return sweeps.IsEmpty ? null : new SweepDrawing(
            HeadOf(sheet.Id("sweep"), sheet.Line.Statement.Name, sheet.Words, sweeps), sheet.Block, answer, sweeps);
    }

    /// <summary>Sweeps of which there is a curve to draw.</summary>
    public static ImmutableArray<LineSweep> Shown(IEnumerable<LineSweep> sweeps) =>
        [.. sweeps.Where(s => s.Points.Count(p => p.MarginDb is not null) > 1)];

    /// <summary>The heading.</summary>
    public static SheetHead HeadOf(string id, string name, string words, ImmutableArray<LineSweep> sweeps) => new(
        id, $"How far {name} is from the edge",
        $"{words}: the smallest margin over one quantity at a time, everything else as designed", Description(sweeps));

    /// <summary>Writes it.</summary>
    public void Write(MarkupWriter markup, bool isFile)
    {
        Sheet.Write(markup, head, block, Bottom + 66, isFile, canvas =>
        {
            canvas.Text(Sheet.Margin, Bottom + 48, Legend(), "small soft");
            var width = Math.Min(MostWidth, (Sheet.Width - (2 * Sheet.Margin) - (Gap * sweeps.Length)) / sweeps.Length);
            for (var i = 0; i < sweeps.Length; i++)
            {
                var left = Sheet.Margin + (Gap * (i + 0.8)) + (width * i);
                Panel(canvas, sweeps[i], left, left + width);
            }
        });
    }

    private void Panel(Canvas canvas, LineSweep sweep, double left, double right)
    {
        ImmutableArray<(double Value, double Margin, Verdict Verdict)> points =
            [.. sweep.Points.Where(p => p.MarginDb is not null).Select(p => (p.Value, p.MarginDb ?? 0, p.Verdict))];
        var along = new ChartAxis(points.Select(p => p.Value), left, right, 5, isTight: true);
        var kept = sweep.Of == LineSweep.Loss ? 0 : answer.Question.LeastMargin.Value;
        var up = new ChartAxis(points.Select(p => p.Margin).Append(0).Append(kept), Bottom, Top, 6);
        canvas.Text(left, Top - 23, $"margin of {sweep.Of}, dB,", "small soft");
        canvas.Text(left, Top - 10, "over " + Words(sweep), "small soft");
        foreach (var tick in up.Ticks())
        {
            canvas.Line(left, up.At(tick), right, up.At(tick), "faint");
            canvas.Text(left - 7, up.At(tick) + 4, ChartAxis.Text(tick), "small end");
        }
        foreach (var tick in along.Ticks())
        {
            canvas.Line(along.At(tick), Bottom, along.At(tick), Bottom + 5, "fine");
            canvas.Text(along.At(tick), Bottom + 19, ChartAxis.Text(tick), "small mid");
        }
        canvas.Line(left, up.At(kept), right, up.At(kept), "act");
        canvas.Path("M" + string.Join('L', points.Select(p => PathText.Of($"{along.At(p.Value)} {up.At(p.Margin)}"))), "heavy");
        foreach (var point in points.Where(p => p.Verdict == Verdict.Fail))
            canvas.Circle(along.At(point.Value), up.At(point.Margin), 3, "actfill");
        foreach (var point in points.Where(p => p.Verdict == Verdict.Unproven))
            canvas.Circle(along.At(point.Value), up.At(point.Margin), 3, "box");
        if (Now(sweep) is not { } now) return;
        canvas.Line(along.At(now), Top, along.At(now), Bottom, "fine broken");
        canvas.Text(along.At(now) + 5, Top + 12, "now", "small bold halo");
    }

    /// <summary>What red means, and what else fails where the curve alone would pass.</summary>
    private string Legend()
    {
        var others = sweeps.SelectMany(s => s.Points).SelectMany(p => p.Failing.Split(", ")).Where(f => f.Length > 0).Distinct().ToList();
        var isUnproven = sweeps.Any(s => s.Points.Any(p => p is { Verdict: Verdict.Unproven, MarginDb: not null }));
        return "red line: what is to be kept"
            + (isUnproven ? "; open points: cannot be proved" : "")
            + (others.Count > 0 ? "; red points: a limit is broken (" + string.Join(", ", others) + ")" : "");
    }

    private double? Now(LineSweep sweep) => sweep.Quantity switch
    {
        "length" => answer.Question.Length.Kilometres,
        "channels" => answer.Question.Channels.Channels.Length,
        _ => answer.Design.Launch?.Dbm,
    };

    private static string Words(LineSweep sweep) => sweep.Quantity switch
    {
        "length" => "length in km",
        "channels" => "channels",
        _ => "launch of a channel in dBm",
    };

    private static string Description(ImmutableArray<LineSweep> sweeps) =>
        "Red points break a limit. " + string.Join(" ", sweeps.Select(s =>
            $"Over {Words(s)}: from {LineSheet.Of(s.Points[0].MarginDb ?? 0, "dB")} at {ChartAxis.Text(s.Points[0].Value)} to "
            + $"{LineSheet.Of(s.Points[^1].MarginDb ?? 0, "dB")} at {ChartAxis.Text(s.Points[^1].Value)}."));
}
