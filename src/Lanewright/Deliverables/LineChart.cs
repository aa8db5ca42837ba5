using System.Collections.Immutable;
using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables.Drawings.Lines;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Deliverables;

/// <summary>The chart of a line that no plan describes: its margin over length, channels and launch.</summary>
public static class LineChart
{
    /// <summary>Writes the chart; null where no sweep has a curve.</summary>
    /// <param name="answer">The line.</param>
    /// <param name="sweeps">What was swept.</param>
    public static Action<Stream>? Of(LineAnswer answer, ImmutableArray<LineSweep> sweeps)
    {
        var shown = SweepDrawing.Shown(sweeps);
        if (shown.IsEmpty) return null;
        var (design, question) = (answer.Design, answer.Question);
        var count = question.Channels.Channels.Length;
        var words = $"{LineWords.Name(design.Scheme)} with {design.TypeName}, {Numerals.Whole(count)} "
            + $"{(count == 1 ? "channel" : "channels")} over {Numerals.Shown(question.Length.Kilometres, "km")}";
        var block = TitleBlock.Of("a line by itself", ("line", words, 3.4), ("verdict", Checks.Word(design.Verdict), 0.9),
            ("weakest mark", Marks.Name(design.Mark), 1.6));
        var drawing = new SweepDrawing(SweepDrawing.HeadOf("line-sweep", "the line", words, shown), block, answer, shown);
        return DrawingFile.Of("sweep.svg", m => drawing.Write(m, isFile: true)).Write;
    }
}
