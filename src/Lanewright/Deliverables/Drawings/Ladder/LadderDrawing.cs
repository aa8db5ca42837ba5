using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Ladder;

/// <summary>The loss ladder: level from the transmitter down to the receiver, against the limits.</summary>
public static class LadderDrawing
{
    private const double PlotTop = Sheet.Top + 34;
    private const double BrightHeight = 74;
    private const double PlotGap = 44;
    private const double PlotBottom = PlotTop + 400;
    private const double TableTop = PlotBottom + 58;
    private const double RowStep = 18;
    private const double NoteStep = 15;
    private const double NoteLeft = 700;

    /// <summary>Writes the ladder of a way; false when there is none, and then <see cref="WhyNone"/> says why.</summary>
    /// <param name="markup">Where to.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="way">The way.</param>
    /// <param name="isFile">Whether it is a file of its own rather than a part of a page.</param>
    public static bool Write(MarkupWriter markup, Plan plan, LinkWay way, bool isFile)
    {
        if (ModelOf(plan, way) is not { } model) return false;
        var head = new SheetHead(way.Name + "-ladder", "Loss ladder: " + WayWords.Title(way), WayWords.Subtitle(plan, way),
            Description(way, model));
        var notes = Notes(model);
        var bottom = TableTop + (Math.Max(model.Rows.Length + 1, notes.Length) * RowStep);
        Sheet.Write(markup, head, TitleBlock.Of(plan, way), bottom, isFile, canvas =>
        {
            var bright = model.Top is { } top ? LadderScale.OfTop(top, PlotTop, PlotTop + BrightHeight) : null;
            var down = LadderScale.OfWay(model, bright is null ? PlotTop : bright.Bottom + PlotGap, PlotBottom);
            new LadderPainter(canvas, model, down, bright).Draw();
            Table(canvas, model);
            canvas.Lines(NoteLeft, TableTop, notes, NoteStep, "small soft");
        });
        return true;
    }

    /// <summary>Whether a way has a ladder.</summary>
    public static bool CanDraw(Plan plan, LinkWay way) => ModelOf(plan, way) is not null;

    /// <summary>Why a way has none, in one line.</summary>
    public static string WhyNone(LinkWay way) => LadderReason.Of(way.Solution);

    private static LadderModel? ModelOf(Plan plan, LinkWay way) =>
        FibreLadder.Of(way.Solution) ?? CopperLadder.Of(plan.Standards, way.Solution);

    private static ImmutableArray<string> Notes(LadderModel model) =>
        [.. model.Notes.Where(n => n.Length > 0).SelectMany(n => TextFit.Lines(n, Sheet.Width - Sheet.Margin - NoteLeft, 10.5))];

    private static string Description(LinkWay way, LadderModel model)
    {
        var rows = string.Join("; ", model.Rows.Select(Words));
        var limits = string.Join("; ", model.Limits.Select(Words));
        var top = model.Top is { Check: { Value: { } value, Limit: { } most } check }
            ? $" Brightest case {Numerals.Unit(value, "dBm")} against {Numerals.Unit(most, "dBm")}, {Checks.Word(check.Verdict)}."
            : "";
        return $"{way.Solution.Name}, {Checks.Word(way.Solution.Verdict)}. {rows}. {limits}.{top} {string.Join(" ", model.Notes)} "
            + $"Classes: {string.Join(", ", way.Members.Select(m => m.Name))}.";
    }

    private static string Words(LadderRow row) =>
        string.Join(' ', new[] { row.What, row.HowMany, row.Each, row.Loss }.Where(t => t.Length > 0));

    private static string Words(LadderLimit limit)
    {
        if (limit.Check.Limit is not { } most) return "no " + limit.Words + " is known";
        var margin = limit.Check.Margin is { } m ? ", margin " + Numerals.Unit(m, "dB") : "";
        return $"{limit.Words} {Numerals.Unit(most, "dB")}{margin}, {limit.Check.Source}";
    }

    private static void Table(Canvas canvas, LadderModel model)
    {
        double[] at = [Sheet.Margin, 330, 530, 640];
        string[] style = ["", " end", " end", " end"];
        string[] heads = ["what costs level", "how many", "each", "loss"];
        for (var i = 0; i < at.Length; i++) canvas.Text(at[i], TableTop, heads[i], "small soft" + style[i]);
        canvas.Line(Sheet.Margin, TableTop + 6, at[^1], TableTop + 6, "fine");
        for (var row = 0; row < model.Rows.Length; row++)
        {
            var y = TableTop + ((row + 1) * RowStep) + 4;
            var line = model.Rows[row];
            if (line.IsTotal) canvas.Line(Sheet.Margin, y - 13, at[^1], y - 13, "fine");
            string[] words = [line.What, line.HowMany, line.Each, line.Loss];
            var weight = line.IsTotal ? "bold" : "";
            for (var i = 0; i < at.Length; i++) canvas.Text(i == 0 ? Sheet.Margin + 20 : at[i], y, words[i], weight + style[i]);
            LadderPainter.Glyph(canvas, Sheet.Margin + 7, y - 4, line.Kind);
        }
    }
}
