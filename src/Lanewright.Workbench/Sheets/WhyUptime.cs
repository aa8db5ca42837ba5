using Lanewright.Deliverables.Drawings.Lines;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Lines.Routes;
using Lanewright.Quantities;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Workbench.Sheets;

/// <summary>How much of the time a line carries something: sites, fibre, and what either of two routes makes of it.</summary>
internal static class WhyUptime
{
    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper, DesignedPlan designed, string thing)
    {
        if (LineDrawingSet.SheetOf(designed, thing) is not { Line: var line })
            return paper.Unknown("Time of a line", $"There is no route '{thing}'.");
        var (uptime, policy) = (line.Uptime, designed.Plan.Policy);
        paper.Heading($"How much of the time {line.Statement.Name} carries something",
            "fibre and sites; equipment of the line is not in it");
        const string caption = "what works together multiplies; of two routes only both at once take it";
        var table = PaperTable.OpenNarrow(paper.Markup, caption, "what", "#km", "#of the time", "#minutes a year without");
        Row("both ends", null, uptime.Ends);
        if (uptime.Routes.Length > 1) Row("sites that both routes pass", null, uptime.Sites);
        if (uptime.Shared.Kilometres > 0) Row("fibre that both routes need", uptime.Shared, uptime.Fibre);
        foreach (var route in uptime.Routes)
        {
            Row($"fibre of {route.Name}", route.Own, route.Fibre);
            Row($"sites on {route.Name}", null, route.Sites);
        }
        table.Row("sum", ["the line", "", LineWords.Percent(uptime.All), Down(uptime.All)]);
        table.Close();
        if (uptime.Routes.IsEmpty) paper.Markup.Element("p", "No route of it works, so that it carries nothing.");
        paper.Markup.Element("p", $"Fibre is cut {Numerals.Plain(policy.FibreCuts.Value)} times a year in 1000 km "
            + $"[{Marks.Name(policy.FibreCuts.Source.Mark)}] and works again after {Numerals.Shown(policy.FibreRepair.Value.Hours, "h")} "
            + $"[{Marks.Name(policy.FibreRepair.Source.Mark)}]; a site of which nothing is stated always works. "
            + "The plan may state all three.");
        return true;

        void Row(string what, Length? fibre, Share up) => table.Row(
            what, fibre is { } length ? Numerals.Plain(Math.Round(length.Kilometres, 2)) : "", LineWords.Percent(up), Down(up));
    }

    private static string Down(Share up) => Numerals.Fixed(RouteAvailability.MinutesDown(up), 1);
}
