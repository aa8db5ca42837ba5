using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>One device: where it stands and where each of its ports leads.</summary>
internal static class DeviceSheet
{
    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        if (paper.Judged.Designed is not { } designed || paper.Now.Links is not { } book)
            return paper.Nothing("Device", "The plan cannot be read yet.");
        var devices = designed.Plan.Devices;
        var device = Enumerable.Range(0, devices.Count).FirstOrDefault(d => devices.Name(d) == paper.Thing, -1);
        if (device < 0) return paper.Unknown("Device", $"There is no device '{paper.Thing}'.");
        var group = devices.Group(device);
        paper.Heading(devices.Name(device), $"{group.Model.Name}, {group.Model.Title}; of the group '{group.Name}'");
        Place(paper, designed, device);
        var table = PaperTable.Open(paper.Markup, "its links", "link", "class", "from", "to", "#rate", "made with", "#length", "#margin",
            "verdict");
        for (var link = 0; link < book.Count; link++)
        {
            if (designed.Plan.Links.FromDevice(link) != device && designed.Plan.Links.ToDevice(link) != device) continue;
            var row = book.Row(link);
            table.Row(new Entry(row[0], paper.Site.To("links", row[0])), new Entry(row[1], paper.Site.To("classes", row[1])),
                row[3], row[4], row[5], row[7], row[8], row[9], new Entry(row[10], "", row[10] == "fail" ? "stop" : ""));
        }
        table.Close();
        return true;
    }

    private static void Place(SheetPaper paper, DesignedPlan designed, int device)
    {
        var devices = designed.Plan.Devices;
        paper.Markup.Open("p");
        if (designed.Plan.Devices.Rack(device) is { } rack)
        {
            var unit = designed.Plan.Devices.Unit(device);
            paper.Markup.Text("Stands in ");
            paper.Way(rack.Name, paper.Site.To("racks", Site.Rack(rack)) + "?q=" + Uri.EscapeDataString(devices.Name(device)));
            paper.Markup.Text(unit > 0 ? $", unit {Numerals.Whole(unit)}." : ".");
        }
        else
        {
            paper.Markup.Text("The plan does not say in which rack it stands.");
        }
        paper.Markup.Close();
    }
}
