using Lanewright.Deliverables.Markup;
using Lanewright.Rules;
using Lanewright.Workbench.Desk;

namespace Lanewright.Workbench.Sheets;

/// <summary>What a sheet is written on, and what it is written from.</summary>
internal sealed class SheetPaper
{
    /// <summary>Where to.</summary>
    public required MarkupWriter Markup { get; init; }

    /// <summary>The result it shows.</summary>
    public required Snapshot Now { get; init; }

    /// <summary>The files of the plan.</summary>
    public required PlanDesk Desk { get; init; }

    /// <summary>Addresses.</summary>
    public required Site Site { get; init; }

    /// <summary>Which one thing is asked for; empty for the whole sheet.</summary>
    public required string Thing { get; init; }

    /// <summary>What is searched for.</summary>
    public required string Query { get; init; }

    /// <summary>Its title, where it is not that of the kind of sheet.</summary>
    public string Title { get; set; } = "";

    /// <summary>The result.</summary>
    public JudgedPlan Judged => Now.Judged;

    /// <summary>Writes a page.</summary>
    public static Page Page(RegisterEntry entry, string thing, string query, Snapshot now, PlanDesk desk, Site site)
    {
        using var text = new StringWriter();
        var paper = new SheetPaper
        {
            Markup = new MarkupWriter(text), Now = now, Desk = desk, Site = site, Thing = thing, Query = query,
        };
        var isFound = entry.Write(paper);
        return new Page(paper.Title.Length > 0 ? paper.Title : entry.Title, text.ToString(), isFound);
    }

    /// <summary>The heading of the sheet, with a line under it.</summary>
    public void Heading(string title, string about = "")
    {
        Title = title;
        Markup.Element("h1", title);
        if (about.Length > 0) Markup.Element("p", about, ("class", "lead"));
    }

    /// <summary>A sentence for a sheet that has nothing to show.</summary>
    public bool Nothing(string title, string words)
    {
        Heading(title);
        Markup.Element("p", words, ("class", "empty"));
        return true;
    }

    /// <summary>Says that the plan has no such thing.</summary>
    public bool Unknown(string title, string words)
    {
        Nothing(title, words);
        return false;
    }

    /// <summary>A word that leads somewhere.</summary>
    public void Way(string words, string address) => Markup.Inline("a", words, ("href", address));

    /// <summary>A drawing.</summary>
    public void Figure(Action draw, string style = "drawing")
    {
        Markup.Open("figure", ("class", style));
        draw();
        Markup.Close();
    }
}
