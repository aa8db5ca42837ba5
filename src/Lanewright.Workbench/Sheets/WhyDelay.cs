using Lanewright.Deliverables;
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
        if (RouteOf(designed, thing) is not { } found) return paper.Unknown("Delay of a route", $"There is no route '{thing}'.");
        var (line, route) = found;
        paper.Heading($"Delay of {line.Statement.Name} over {route.Name}", "light in the fibre, one way");
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
            Of(route.Answer.Design.Latency?.Value), ""]);
        table.Close();
        paper.Markup.Element("p", "What codes and signal processing of the modules take comes on top.");
        return true;
    }

    /// <summary>A route by its name among drawings and cables.</summary>
    public static (LineResult Line, LineRoute Route)? RouteOf(DesignedPlan designed, string thing)
    {
        foreach (var line in designed.Lines.Value.Lines)
            foreach (var (i, route) in line.Routes.Index())
                if (Identifiers.Line(line.Statement.Index, i) == thing) return (line, route);
        return null;
    }

    private static string Of(Duration? delay) => delay is { } d ? Numerals.Fixed(d.Nanoseconds / 1000, 2) : "not known";
}
