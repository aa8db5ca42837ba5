using System.Collections.Immutable;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings.Floor;
using Lanewright.Deliverables.Tables;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>The parts list, or one part with everything it goes to.</summary>
internal static class PartsSheet
{
    private const int MostRows = 2000;
    private const int MostNames = 200;

    /// <summary>Columns that are told only where something stands in them.</summary>
    private static readonly ImmutableArray<string> Sparse = ["length-m", "type", "existing", "from-stock", "spares"];

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        if (paper.Judged.Designed is not { } designed) return paper.Nothing("Parts", "The plan cannot be read yet.");
        if (designed.Parts.IsEmpty) return paper.Nothing("Parts", "The plan needs no part.");
        if (paper.Thing.Length > 0) return One(paper, designed);
        paper.Heading("Parts", "A model opens its places and what it is needed for. "
            + "Prices marked invented are placeholders until a quotation replaces them.");
        if (paper.Query.Length > 0)
        {
            paper.Markup.Open("p");
            paper.Markup.Text($"Only '{paper.Query}'. ");
            paper.Way("All parts", paper.Site.To("parts"));
            paper.Markup.Close();
        }
        List(paper, designed, r => paper.Query.Length == 0 || r[0].Text == paper.Query || r[2].Text == paper.Query);
        return true;
    }

    private static void List(SheetPaper paper, DesignedPlan designed, Func<Cell[], bool> isShown)
    {
        var whole = PartsView.Of(designed);
        var rows = whole.Rows().Where(isShown).Select(r => r.ToArray()).ToList();
        var view = FittedTable.Filled(whole with { Rows = () => rows }, Sparse);
        PaperTable.Write(paper.Markup, view, $"prices in {designed.Plan.Currency}", MostRows, (column, text, row) => column switch
        {
            "model" => paper.Site.To("parts", text),
            "kind" => paper.Site.Asking("parts", text),
            "needed" or "to-buy" or "total-price" or "total-watts" => paper.Site.To("parts", rows[row][0].Text),
            _ => "",
        });
    }

    private static bool One(SheetPaper paper, DesignedPlan designed)
    {
        if (designed.Parts.FirstOrDefault(p => p.Item.Name == paper.Thing) is not { } part)
            return paper.Unknown("Parts", $"The parts list has no '{paper.Thing}'.");
        var (name, places) = (part.Item.Name, PartPlaces.Of(designed, part.Item.Name));
        paper.Heading(name, $"{part.Item.Title}. Price {PartsView.PriceMarkOf(part)}.");
        List(paper, designed, r => r[0].Text == name);
        WhyPart.Write(paper, designed, name);
        if (places.Racks.Count > 0)
            paper.Markup.Element("p", "On the floors below, the racks it goes to are filled with ink; a rack opens its elevation.",
                ("class", "soft"));
        Names(paper, "Devices", places.Devices.Select(d => designed.Plan.Devices.Name(d)), "devices");
        Names(paper, "Links", places.Links.Select(Identifiers.Link), "links");
        if (places.Devices.Count == 0 && places.Links.Count == 0)
            paper.Markup.Element("p", "No device is this and no link is made with it: it goes to trunks and panels, or to stock.",
                ("class", "soft"));
        var view = new FloorView(places.Racks, r => paper.Site.To("racks", Site.Rack(r)));
        var inHall = places.Racks.CountBy(r => r.Hall).ToDictionary();
        paper.Markup.Open("div", ("class", "places"));
        foreach (var (hall, i) in FloorSet.Halls(designed.Plan.Building).Select((h, i) => (h, i)).Where(h => inHall.ContainsKey(h.h))
            .OrderByDescending(h => inHall[h.h]))
            paper.Figure(
                () => FloorSet.Drawing(designed, hall, view).Write(paper.Markup, Identifiers.Floor(i + 1) + "-floor", isFile: false));
        paper.Markup.Close();
        return true;
    }

    private static void Names(SheetPaper paper, string heading, IEnumerable<string> all, string sheet)
    {
        var names = all.ToList();
        if (names.Count == 0) return;
        paper.Markup.Element("h2", $"{heading}, {Numerals.Grouped(names.Count)}");
        paper.Markup.Open("p", ("class", "list"));
        foreach (var name in names.Take(MostNames)) paper.Way(name, paper.Site.To(sheet, name));
        if (names.Count > MostNames)
            paper.Markup.Text($" and {Numerals.Grouped(names.Count - MostNames)} more; the racks below are those of all.");
        paper.Markup.Close();
    }
}
