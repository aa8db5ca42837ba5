using System.Collections.Immutable;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings.Elevation;
using Lanewright.Engineering.Power;
using Lanewright.Engineering.Space;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>Racks from the front and from the rear, with what they hold, weigh and draw.</summary>
internal static class RacksSheet
{
    private const int MostTabs = 80;
    private const int MostRows = 500;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        if (paper.Judged.Designed is not { } designed) return paper.Nothing("Racks", "The plan cannot be read yet.");
        var book = designed.Racks.Value;
        if (book.Racks.IsEmpty) return paper.Nothing("Racks", "No device stands in a rack yet.");
        var sheets = ElevationSet.Sheets(book).ToList();
        var areSitesTold = book.Racks.Select(r => r.Rack.Hall.Site).Distinct().Count() > 1;
        var names = sheets.Select((s, i) => (Name: Identifiers.Elevation(i + 1), Words: Words(s, areSitesTold))).ToList();
        // Without a wish, the sheet with most on it.
        var at = paper.Thing.Length == 0
            ? Enumerable.Range(0, sheets.Count).MaxBy(i => (sheets[i].Sum(r => r.Devices.Length), -i))
            : names.FindIndex(n => n.Name == paper.Thing);
        // A rack may be asked for by its own name.
        if (at < 0) at = sheets.FindIndex(s => s.Any(r => Site.Rack(r.Rack) == paper.Thing));
        if (at < 0) at = sheets.FindIndex(s => s.Any(r => r.Rack.Name == paper.Thing));
        if (at < 0) return paper.Unknown("Racks", $"There is no rack and no sheet '{paper.Thing}'.");
        paper.Heading("Racks");
        Tabs.Write(paper, "racks", names.Count <= MostTabs ? names : [.. names.Skip(Math.Max(0, at - 10)).Take(MostTabs)], names[at].Name);
        var strips = new Lazy<ILookup<int, StripLoad>>(() => designed.Strips.ToLookup(s => s.Rack.Index));
        foreach (var isRear in new[] { false, true })
            paper.Figure(() => new ElevationDrawing(designed, sheets[at], strips, isRear)
                .Write(paper.Markup, names[at].Name + (isRear ? "-rear" : "-front"), isFile: false));
        var shown = sheets[at].Select(r => r.Rack).ToHashSet();
        Devices(paper, designed, sheets[at]);
        var table = RacksView.Of(designed);
        PaperTable.Write(paper.Markup, table with { Rows = () => table.Rows().Where((_, i) => shown.Contains(book.All[i].Rack)) },
            "these racks; a number opens what it is made of", MostRows, (column, _, row) => column switch
            {
                "rack" => paper.Site.To("racks", Site.Rack(sheets[at][row].Rack)),
                "kind" => "",
                _ => sheets[at][row].Devices.IsEmpty ? "" : WhyRack.Address(paper.Site, sheets[at][row]),
            });
        if (designed.Plan.Power.IsEmpty) return true;
        var feeds = FeedsView.Of(designed);
        var loads = designed.Strips;
        var here = loads.Where(l => shown.Contains(l.Rack)).ToList();
        PaperTable.Write(paper.Markup, feeds with { Rows = () => feeds.Rows().Where((_, i) => shown.Contains(loads[i].Rack)) },
            "their strips, in amperes; a number opens what it is made of", MostRows, (column, _, row) =>
                column is "feed" || column.StartsWith("phase-", StringComparison.Ordinal)
                || column is "may-carry-A" or "unbalance-%" or "after-loss-A"
                    ? paper.Site.To("why", "feed/" + here[row].Feed.Name) : "");
        return true;
    }

    /// <summary>The racks of a sheet by hall, row and number. Halls of two sites may share a name, so with several sites the site is told,
    /// too.</summary>
    private static string Words(ImmutableArray<RackContents> racks, bool areSitesTold)
    {
        var (first, last) = (racks[0].Rack, racks[^1].Rack);
        return $"{(areSitesTold ? first.Hall.FullName : first.Hall.Name)}/{first.Row} {Numerals.Whole(first.Number)}"
            + (last.Number == first.Number ? "" : $" to {Numerals.Whole(last.Number)}");
    }

    private static void Devices(SheetPaper paper, DesignedPlan designed, IEnumerable<RackContents> racks)
    {
        paper.Markup.Element("h2", "Devices here");
        paper.Markup.Open("p", ("class", "list"));
        foreach (var device in racks.SelectMany(r => r.Devices))
        {
            var name = designed.Plan.Devices.Name(device);
            paper.Way(name, paper.Site.To("devices", name));
            paper.Markup.Text(" ");
        }
        paper.Markup.Close();
    }
}
