using Lanewright.Deliverables.Drawings.Lines;
using Lanewright.Engineering.Lines;
using Lanewright.Quantities;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Workbench.Sheets;

/// <summary>The delay of a route in one direction, span by span.</summary>
internal static class WhyDelay
{
    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper, DesignedPlan designed, string thing)
    {
        if (LineDrawingSet.SheetOf(designed, thing) is not { } sheet)
            return paper.Unknown("Delay of a route", $"There is no route '{thing}'.");
        var route = sheet.Line.Routes[sheet.Route];
        paper.Heading($"Delay of {sheet.Words}", "light in the fibre, one way");
        const string caption = "length times group index over the speed of light in vacuum";
        var table = PaperTable.OpenNarrow(paper.Markup, caption, "span", "fibre", "#km", "#group index", "#us", "value is");
        foreach (var span in route.Answer.Question.Spans)
        {
            var delay = CoherentLine.LatencyOf(span);
            table.Row(span.Name, span.Fibre.Name, Numerals.Plain(Math.Round(span.Length.Kilometres, 2)),
                span.Fibre.GroupIndex is { } index ? Numerals.Plain(index.Value) : "not known", Of(delay?.Value),
                delay is { } known ? Marks.Name(known.Source.Mark) : "");
        }
        table.Row("sum", ["together", "", Numerals.Plain(Math.Round(route.Length.Kilometres, 2)), "",
            Of(sheet.Design.Latency?.Value), ""]);
        table.Close();
        paper.Markup.Element("p", "What codes and signal processing of the modules take comes on top.");
        return true;
    }

    private static string Of(Duration? delay) => delay is { } d ? Numerals.Fixed(d.Nanoseconds / 1000, 2) : "not known";
}
