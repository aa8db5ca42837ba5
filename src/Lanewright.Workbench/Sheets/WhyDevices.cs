using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>How many devices there are, group by group.</summary>
internal static class WhyDevices
{
    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper, DesignedPlan designed)
    {
        var devices = designed.Plan.Devices;
        paper.Heading($"{Numerals.Grouped(devices.Count)} devices", "The sum of the groups of the plan. A group opens its first device, "
            + "and a model everything it goes to.");
        var table = PaperTable.Open(paper.Markup, "groups, the largest first", "group", "model", "what it is", "#devices",
            "#of them existing", "#in racks");
        foreach (var group in devices.Groups.OrderByDescending(g => g.Count).ThenBy(g => g.Name, Text.NaturalOrder.Instance))
        {
            var racks = Enumerable.Range(group.First, group.Count).Select(d => devices.Rack(d)?.Index).OfType<int>().Distinct().Count();
            table.Row(new Entry(group.Name, group.Count > 0 ? paper.Site.To("devices", devices.Name(group.First)) : ""),
                new Entry(group.Model.Name, paper.Site.To("parts", group.Model.Name)), group.Model.Title, Numerals.Grouped(group.Count),
                group.IsExisting ? Numerals.Grouped(group.Count) : "", racks > 0 ? Numerals.Grouped(racks) : "");
        }
        table.Row("sum", ["together", "", "", Numerals.Grouped(devices.Count), "", ""]);
        table.Close();
        return true;
    }
}
