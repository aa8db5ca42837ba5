using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>Answers to a search: devices, racks, links, classes, parts and rules.</summary>
internal static class FindSheet
{
    private const int Most = 60;
    private const int MostLinks = 40;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        var words = paper.Query.Trim();
        if (words.Length == 0) return paper.Nothing("Search", "Type a device, a port, a cable, a part or a code.");
        paper.Heading("Search", $"for '{words}'");
        var found = Exactly(paper, words);
        bool Has(string text) => text.Contains(words, StringComparison.OrdinalIgnoreCase);
        found += List(paper, "Rules", RuleBook.Kinds.Where(k => Has(k.Code) || Has(k.Name))
            .Select(k => ($"{k.Code} {k.Name}", paper.Site.To("rules", k.Code))));
        if (paper.Judged.Designed is { } designed && paper.Now.Links is { } book) found += InPlan(paper, designed, book, words);
        if (found == 0) paper.Markup.Element("p", "Nothing in the plan and no rule has this in its name.", ("class", "empty"));
        return true;
    }

    /// <summary>What is called just this, on its page and on the drawing.</summary>
    private static int Exactly(SheetPaper paper, string words)
    {
        if (paper.Now.Places?.Of(words) is not { } found) return 0;
        paper.Markup.Element("h2", "Called just this");
        paper.Markup.Open("p", ("class", "list"));
        paper.Way(words, paper.Site.To(found.Page));
        if (found.Drawing is { } drawing) paper.Way("on the drawing", paper.Site.To(drawing));
        paper.Markup.Close();
        return 1;
    }

    private static int InPlan(SheetPaper paper, DesignedPlan designed, LinkBook book, string words)
    {
        bool Has(string text) => text.Contains(words, StringComparison.OrdinalIgnoreCase);
        var devices = designed.Plan.Devices;
        var found = List(paper, "Devices", Enumerable.Range(0, devices.Count)
            .Where(d => Has(devices.Name(d)) || Has(devices.Group(d).Model.Name) || words.StartsWith(devices.Name(d) + ":",
                StringComparison.OrdinalIgnoreCase))
            .Select(d => (devices.Name(d), paper.Site.To("devices", devices.Name(d)))));
        found += List(paper, "Racks", designed.Plan.Building.Racks.Where(r => Has(Site.Rack(r)))
            .Select(r => (Site.Rack(r), paper.Site.To("racks", Site.Rack(r)))));
        found += List(paper, "Trays, halls, demands, lines, trunks and feeds", (paper.Now.Places?.Containing(words) ?? [])
            .Select(n => (n.Name, paper.Site.To(n.Page))));
        found += List(paper, "Classes of links", book.Kinds.Where(k => k.Words.Any(Has))
            .Select(k => ($"{k.Name} {k.Made}", paper.Site.To("classes", k.Name))));
        found += List(paper, "Parts", designed.Parts.Where(p => Has(p.Item.Name)).Select(p => p.Item.Name).Distinct()
            .Select(n => (n, paper.Site.To("parts", n))));
        var links = book.Select(words, "");
        if (links.Length == 0) return found;
        paper.Markup.Element("h2", $"Links, {Numerals.Grouped(links.Length)}");
        paper.Markup.Open("p");
        paper.Way("in the table of links", paper.Site.Asking("links", words));
        paper.Markup.Close();
        var table = PaperTable.Open(paper.Markup, "the first of them", "link", "from", "to", "#rate", "made with", "verdict");
        foreach (var link in links.Take(MostLinks))
        {
            var row = book.Row(link);
            table.Row(new Entry(row[0], paper.Site.To("links", row[0])), row[3], row[4], row[5], row[7],
                new Entry(row[10], "", row[10] == "fail" ? "stop" : ""));
        }
        table.Close();
        return found + links.Length;
    }

    private static int List(SheetPaper paper, string heading, IEnumerable<(string Words, string Address)> all)
    {
        var shown = all.Take(Most + 1).ToList();
        if (shown.Count == 0) return 0;
        if (heading.Length > 0) paper.Markup.Element("h2", heading);
        paper.Markup.Open("p", ("class", "list"));
        foreach (var (words, address) in shown.Take(Most))
        {
            paper.Way(words, address);
            paper.Markup.Text(" ");
        }
        if (shown.Count > Most) paper.Markup.Text("and more");
        paper.Markup.Close();
        return shown.Count;
    }
}
