using Lanewright.Deliverables.Markup;
using Lanewright.Rules;
using Lanewright.Workbench.Desk;
using Microsoft.AspNetCore.Http;

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

    /// <summary>What else the address asks.</summary>
    public required IQueryCollection Asked { get; init; }

    /// <summary>Whether it shows the text as saved because it was asked for.</summary>
    public bool IsSaved { get; private init; }

    /// <summary>An address of the same text as this sheet shows.</summary>
    public string Same(string address) => IsSaved ? $"{address}?{SheetSides.Key}={SheetSides.Word(SheetSide.Saved)}" : address;

    /// <summary>What is searched for.</summary>
    public string Query => Asked["q"].ToString();

    /// <summary>Its title, where it is not that of the kind of sheet.</summary>
    public string Title { get; set; } = "";

    /// <summary>The result.</summary>
    public JudgedPlan Judged => Now.Judged;

    /// <summary>Writes a page.</summary>
    public static Page Page(RegisterEntry entry, string thing, IQueryCollection asked, Snapshot now, PlanDesk desk, Site site)
    {
        var side = SheetSides.Read(asked[SheetSides.Key].ToString(), entry.Choice);
        if (side != SheetSide.Both) return One(side == SheetSide.Saved);
        var (saved, typed) = (One(isSaved: true), One(isSaved: false));
        return typed with { Body = Beside(saved.Body, typed.Body), IsFound = saved.IsFound || typed.IsFound };

        Page One(bool isSaved)
        {
            using var text = new StringWriter();
            var paper = new SheetPaper
            {
                Markup = new MarkupWriter(text), Now = isSaved ? now.AsSaved : now, IsSaved = isSaved, Desk = desk, Site = site,
                Thing = thing, Asked = asked,
            };
            var isFound = entry.Write(paper);
            return new Page(paper.Title.Length > 0 ? paper.Title : entry.Title, text.ToString(), isFound);
        }
    }

    private static string Beside(string saved, string typed)
    {
        using var text = new StringWriter();
        var markup = new MarkupWriter(text);
        markup.Open("div", ("class", "beside"));
        foreach (var (words, body) in new[] { ("as saved", SheetSides.Renamed(saved)), ("as typed", typed) })
        {
            markup.Open("section", ("aria-label", words));
            markup.Element("p", words, ("class", "side"));
            markup.Trusted(body);
            markup.Close();
        }
        markup.Close();
        return text.ToString();
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
