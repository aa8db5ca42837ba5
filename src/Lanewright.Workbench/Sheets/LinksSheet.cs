using Lanewright.Deliverables;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>All links with a filter and their margins, or one link with everything that is known about it.</summary>
internal static class LinksSheet
{
    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        if (paper.Judged.Designed is not { } designed || paper.Now.Links is not { } book)
            return paper.Nothing("Links", "The plan cannot be read yet.");
        if (paper.Thing.Length > 0) return One(paper, designed, book);
        if (book.Count == 0) return paper.Nothing("Links", "The plan has no links yet.");
        paper.Heading("Links");
        if (PlanSummary.Of(designed).Links - book.Count is > 0 and var channels)
            paper.Markup.Element("p", $"{Numerals.Grouped(channels)} channels of lines between sites count as links too; their "
                + "margins are on the sheet Lines.", ("class", "lead"));
        Histogram.Write(paper, book);
        Filter(paper);
        Table(paper, book);
        return true;
    }

    private static void Filter(SheetPaper paper)
    {
        var markup = paper.Markup;
        markup.Open("form", ("class", "filter"), ("action", paper.Site.To("links")));
        markup.Element("label", "Show links with", ("for", "filter"));
        markup.Leaf("input", ("id", "filter"), ("name", "q"), ("type", "search"), ("value", paper.Query), ("maxlength", "200"),
            ("autocomplete", "off"), ("placeholder", "a device, port, set, class, type, part, verdict; margin<1"));
        markup.Inline("output", "", ("id", "shown"), ("aria-live", "polite"));
        markup.Close();
    }

    private static void Table(SheetPaper paper, LinkBook book)
    {
        var markup = paper.Markup;
        markup.Open("div", ("id", "links"), ("data-as", SheetSides.Word(SheetSides.Read(paper.Asked[SheetSides.Key].ToString(),
            SideChoice.Either))), ("role", "table"), ("aria-rowcount", Numerals.Whole(book.Count + 1)), ("aria-label", "links"));
        markup.Open("div", ("role", "row"), ("class", "heads"));
        foreach (var (title, sort) in LinkBook.Columns)
        {
            markup.Open("span", ("role", "columnheader"));
            if (sort.Length > 0) markup.Inline("button", title, ("type", "button"), ("data-sort", sort));
            else markup.Text(title);
            markup.CloseInline();
        }
        markup.Close();
        markup.Open("div", ("class", "window"), ("tabindex", "0"), ("role", "rowgroup"),
            ("aria-label", "rows; arrow keys move, Enter opens"));
        markup.Open("div", ("class", "tall"));
        markup.Close();
        markup.Close();
        markup.Close();
    }

    private static bool One(SheetPaper paper, DesignedPlan designed, LinkBook book)
    {
        if (paper.Now.Places?.LinkOf(paper.Thing) is not { } link) return paper.Unknown("Links", $"There is no link '{paper.Thing}'.");
        var row = book.Row(link);
        paper.Heading($"Link {row[0]}", $"{row[3]} to {row[4]}, {row[5]}, of '{row[2]}'");
        paper.Markup.Open("p", ("class", "list"));
        foreach (var device in new[] { designed.Plan.Links.FromDevice(link), designed.Plan.Links.ToDevice(link) })
        {
            var name = designed.Plan.Devices.Name(device);
            paper.Way(name, paper.Site.To("devices", name));
            paper.Markup.Text(" ");
        }
        paper.Way("its length along its way", "#length");
        paper.Markup.Text(" ");
        paper.Way($"all links of {row[1]}", paper.Site.Asking("links", row[1]));
        paper.Markup.Text(" ");
        if (designed.Plan.Statements[designed.Plan.Links.Statement(link)].Span is { Source: not null } span
            && paper.Now.Files.Contains(span.Path))
            paper.Way("its line in the plan", paper.Site.To("plan", span.Path) + "#L" + Numerals.Whole(span.Position.Line));
        paper.Markup.Close();
        ClassSheet.Way(paper, designed, row[1]);
        WhyLength.Section(paper, designed, link, "h3");
        return true;
    }
}
