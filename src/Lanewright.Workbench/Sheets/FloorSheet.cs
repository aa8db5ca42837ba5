using System.Collections.Immutable;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings.Floor;
using Lanewright.Model.Places;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>The halls from above, with their racks, trays and how full these are.</summary>
internal static class FloorSheet
{
    private const int MostRows = 400;

    /// <summary>Columns that are told only where something stands in them.</summary>
    private static readonly ImmutableArray<string> Sparse = ["of-unknown-diameter", "moved-off", "bundles", "from-z-m", "to-z-m"];

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        if (paper.Judged.Designed is not { } designed) return paper.Nothing("Floor", "The plan cannot be read yet.");
        var halls = FloorSet.Halls(designed.Plan.Building);
        if (halls.IsEmpty) return paper.Nothing("Floor", "The plan describes no hall with racks. A section 'sites' does.");
        paper.Heading("Floor");
        var wanted = paper.Thing.Length == 0 ? Identifiers.Floor(Fullest(designed, halls) + 1) : paper.Thing;
        var marked = designed.Plan.Building.Racks.Where(r => paper.Asked["mark"].Contains(r.Name)).ToHashSet();
        var view = new FloorView(marked, r => paper.Site.To("racks", Site.Rack(r)));
        var isFound = false;
        var choices = halls.Select((hall, i) => (Name: Identifiers.Floor(i + 1), hall.FullName)).ToList();
        Tabs.Write(paper, "floor", choices, wanted);
        for (var i = 0; i < halls.Length; i++)
        {
            if (Identifiers.Floor(i + 1) != wanted) continue;
            isFound = true;
            paper.Figure(() => FloorSet.Drawing(designed, halls[i], view).Write(paper.Markup, wanted + "-floor", isFile: false));
        }
        if (!isFound) return paper.Unknown("Floor", $"There is no hall '{paper.Thing}'.");
        if (designed.Pathways.Value.Fills.Any())
            Pathways(paper, designed);
        return true;
    }

    /// <summary>Every stretch, with the way to what fills it.</summary>
    private static void Pathways(SheetPaper paper, DesignedPlan designed)
    {
        var fills = designed.Pathways.Value.Fills;
        var view = FittedTable.Filled(PathwaysView.Of(designed), Sparse);
        view = FittedTable.Joined(view, "from-x-/-y-m", " / ", "from-x-m", "from-y-m");
        view = FittedTable.Joined(view, "to-x-/-y-m", " / ", "to-x-m", "to-y-m");
        view = FittedTable.Joined(view, "from-z-/-to-z-m", " / ", "from-z-m", "to-z-m");
        view = FittedTable.Joined(view, "width-x-depth-mm", " x ", "width-mm", "depth-mm");
        PaperTable.Write(paper.Markup, view, "trays and ducts; a name or a fill opens what lies in it", MostRows,
            (column, _, row) => column is "pathway" or "fill-%" ? WhyTray.Address(paper.Site, fills[row]) : "");
    }

    /// <summary>The hall with the most racks: the one most questions are about.</summary>
    private static int Fullest(DesignedPlan designed, ImmutableArray<Hall> halls)
    {
        var racks = designed.Plan.Building.Racks.CountBy(r => r.Hall).ToDictionary();
        return Enumerable.Range(0, halls.Length).MaxBy(i => (racks.GetValueOrDefault(halls[i]), -i));
    }
}
