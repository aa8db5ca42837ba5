using Lanewright.Engineering.Fabrics;
using Lanewright.Model;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>What the watts, the rack units, the room for hosts and the gap of each option come from.</summary>
internal static class OptionSums
{
    /// <summary>Where the watts of an option stand on the sheet.</summary>
    /// <param name="option">Which, from 0.</param>
    public static string Watts(int option) => "#watts-" + Numerals.Whole(option + 1);

    /// <summary>Where its rack units stand.</summary>
    public static string Units(int option) => "#units-" + Numerals.Whole(option + 1);

    /// <summary>Where its room for hosts stands.</summary>
    public static string Room(int option) => "#room-" + Numerals.Whole(option + 1);

    /// <summary>Where its gap stands.</summary>
    public static string Gap(int option) => "#gap-" + Numerals.Whole(option + 1);

    /// <summary>Writes them.</summary>
    public static void Write(SheetPaper paper, Plan plan, FabricStudy study)
    {
        paper.Markup.Element("h2", "Watts, rack units, room and gap");
        foreach (var (option, i) in study.Answer.Options.Select((o, i) => (o, i)))
        {
            var title = $"{Numerals.Whole(i + 1)} {FabricShapes.Title(option.Shape)}";
            Part(paper, Watts(i), () => WattsOf(paper, option, title));
            Part(paper, Units(i), () => UnitsOf(paper, option, title));
            Part(paper, Room(i), () => RoomOf(paper, option, title));
            Part(paper, Gap(i), () => GapOf(paper, plan, option, title));
        }
    }

    private static void Part(SheetPaper paper, string anchor, Action write)
    {
        paper.Markup.Open("div", ("id", anchor[1..]));
        write();
        paper.Markup.Close();
    }

    private static void WattsOf(SheetPaper paper, FabricOption option, string title)
    {
        var table = PaperTable.OpenNarrow(paper.Markup,
            $"{title}: watts, of switches under a usual load and of what sits in cages at the most", "part", "#in use", "#W each", "#W");
        foreach (var draw in option.Draws)
            table.Row(draw.What, Numerals.Grouped(draw.Count), Numerals.Plain(draw.Each.Value),
                Numerals.Grouped((decimal)(draw.Count * draw.Each.Value), 1));
        table.Row("sum", ["together", "", "", Numerals.Grouped((decimal)option.Watts.Value)]);
        table.Close();
    }

    private static void UnitsOf(SheetPaper paper, FabricOption option, string title)
    {
        var table = PaperTable.OpenNarrow(paper.Markup, $"{title}: rack units", "switch", "#in use", "#units each", "#units",
            "#units after the last year");
        foreach (var use in option.Switches)
            table.Row(use.Model.Name, Numerals.Grouped(use.Count), Numerals.Whole(use.Model.Units),
                Numerals.Grouped((long)use.Count * use.Model.Units), Numerals.Grouped((long)use.CountOverYears * use.Model.Units));
        table.Row("sum", ["together", "", "", Numerals.Grouped(option.RackUnits), Numerals.Grouped(option.Needs.RackUnits)]);
        table.Close();
    }

    private static void RoomOf(SheetPaper paper, FabricOption option, string title)
    {
        var room = option.Room;
        var table = PaperTable.OpenNarrow(paper.Markup, $"{title}: room for hosts", "step", "#");
        table.Row(room.Unit == "hosts" ? "ports of one box for hosts" : $"ports of one switch above for {room.Unit}",
            Numerals.Grouped(room.Ports));
        table.Row("ports that each of them takes", Numerals.Grouped(room.PortsEach));
        if (room.Others != 0) table.Row($"{room.Unit} of other hosts", Numerals.Grouped(room.Others));
        table.Row($"{room.Unit} at the most", Numerals.Grouped(room.Units));
        if (room.HostsEach > 1) table.Row("hosts of each", Numerals.Grouped(room.HostsEach));
        table.Row("hosts at the start", Numerals.Grouped(room.Start));
        table.Row("sum", ["room for hosts beyond the start", Numerals.Grouped(room.Left)]);
        table.Close();
    }

    private static void GapOf(SheetPaper paper, Plan plan, FabricOption option, string title)
    {
        var table = PaperTable.OpenNarrow(paper.Markup, $"{title}: gap", "step", "#" + plan.Currency);
        table.Row("price over the years", Numerals.Grouped(option.PriceOverYears.Units, 2));
        table.Row("no design alike costs less than", Numerals.Grouped(option.LowerBound.Units, 2));
        table.Row("difference", Numerals.Grouped((option.PriceOverYears - option.LowerBound).Units, 2));
        table.Row("sum", ["the difference as a part of the price", option.Gap.ToString()]);
        table.Close();
    }
}
