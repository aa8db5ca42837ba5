using System.Runtime.InteropServices;
using System.Security.Cryptography;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Markup;
using Lanewright.Findings;
using Lanewright.Quantities;
using Lanewright.Workbench.Desk;
using Microsoft.AspNetCore.Http;

namespace Lanewright.Workbench.Sheets;

/// <summary>What is around every sheet: the list of sheets at the left, and the title block at the foot.</summary>
internal sealed class Frame
{
    private const int PrintBytes = 12;

    private readonly MarkupWriter markup;
    private readonly PlanDesk desk;
    private readonly Site site;
    private readonly RegisterEntry? entry;
    private readonly HttpRequest request;

    private Frame(MarkupWriter markup, PlanDesk desk, Site site, RegisterEntry? entry, HttpRequest request)
    {
        this.markup = markup;
        this.desk = desk;
        this.site = site;
        this.entry = entry;
        this.request = request;
    }

    /// <summary>A page that is not ready yet.</summary>
    /// <param name="words">Why.</param>
    /// <param name="work">The place its work is known by.</param>
    public static Page BeingMade(string words, string work)
    {
        using var text = new StringWriter();
        var markup = new MarkupWriter(text);
        markup.Element("h1", "One moment");
        Waiting(markup, words, work);
        return new Page("One moment", text.ToString(), IsFound: true);
    }

    /// <summary>A page whose making a person broke off.</summary>
    /// <param name="work">The place its work is known by.</param>
    public static Page BrokenOff(string work)
    {
        using var text = new StringWriter();
        var markup = new MarkupWriter(text);
        markup.Element("h1", "Broken off");
        markup.Element("p", "You broke this off; nothing of it goes on.", ("class", "empty"));
        Steer(markup, "Work it out after all", "resume", work);
        return new Page("Broken off", text.ToString(), IsFound: true);
    }

    /// <summary>A page for an address at which no sheet stands.</summary>
    public static Page NoSuchSheet(string place) => Words("No such sheet", $"There is no sheet '{place}'. The list of sheets has all "
        + "there are.", "empty", isFound: false);

    /// <summary>The whole page around a sheet.</summary>
    public static string Around(Page page, RegisterEntry? entry, PlanDesk desk, Site site, long seen, HttpRequest request)
    {
        using var text = new StringWriter();
        text.Write("<!DOCTYPE html>\n");
        new Frame(new MarkupWriter(text), desk, site, entry, request).Write(Inner(page, entry, desk, site, request), seen, page.Title);
        return text.ToString();
    }

    private static string Inner(Page page, RegisterEntry? entry, PlanDesk desk, Site site, HttpRequest request)
    {
        using var text = new StringWriter();
        var frame = new Frame(new MarkupWriter(text), desk, site, entry, request);
        frame.Fault();
        frame.JudgingGoesOn();
        text.Write(page.Body);
        return text.ToString();
    }

    /// <summary>What tells one sheet from another.</summary>
    private static string PrintOf(string inner) =>
        Convert.ToHexStringLower(SHA256.HashData(MemoryMarshal.AsBytes(inner.AsSpan())).AsSpan(0, PrintBytes));

    private static Page Words(string title, string words, string style, bool isFound)
    {
        using var text = new StringWriter();
        var markup = new MarkupWriter(text);
        markup.Element("h1", title);
        markup.Element("p", words, ("class", style), ("role", "status"));
        return new Page(title, text.ToString(), isFound);
    }

    /// <summary>Words for somebody who waits, with how far it is and a way out.</summary>
    private static void Waiting(MarkupWriter markup, string words, string work)
    {
        markup.Open("div", ("class", "waiting"), ("data-work", work), ("role", "status"));
        markup.Element("p", words);
        markup.Element("p", "", ("class", "step small"));
        markup.Close();
        Steer(markup, "Break it off", "break-off", work);
    }

    private static void Steer(MarkupWriter markup, string words, string what, string work) =>
        markup.Inline("button", words, ("type", "button"), ("data-post", $"{what}?work={Uri.EscapeDataString(work)}"));

    private void Write(string inner, long seen, string title)
    {
        var print = PrintOf(inner);
        var name = desk.Current?.Judged.Plan?.Name ?? desk.First;
        markup.Open("html", ("lang", "en-GB"));
        markup.Open("head");
        markup.Leaf("meta", ("charset", "utf-8"));
        markup.Leaf("meta", ("name", "viewport"), ("content", "width=device-width"));
        markup.Leaf("meta", ("name", "color-scheme"), ("content", "light dark"));
        markup.Element("title", $"{title}, {name}");
        foreach (var sheet in new[] { "drawings.css", "workbench.css" })
            markup.Leaf("link", ("rel", "stylesheet"), ("href", site.To("assets", sheet)));
        markup.Leaf("link", ("rel", "icon"), ("href", site.To("assets", "mark.svg")));
        markup.Open("script", ("type", "module"), ("src", site.To("assets", "workbench.js")));
        markup.Close();
        markup.Close();
        markup.Open("body", ("data-root", site.To("")), ("data-seen", Numerals.Whole(seen)), ("data-sheet", entry?.Key ?? ""));
        markup.Inline("a", "to the sheet", ("href", "#sheet"), ("class", "skip"));
        ListOfSheets();
        markup.Open("main", ("id", "sheet"), ("tabindex", "-1"), ("data-print", print));
        // The print of the sheet that the window has: the same is not sent again.
        if (request.Headers["X-Have"] != print) markup.Trusted(inner);
        markup.Close();
        TitleBlock();
        markup.Close();
        markup.Close();
    }

    private void Fault()
    {
        if (desk.Current?.Fault is { Length: > 0 } fault)
            markup.Element("p", $"The text as it is now cannot be judged, through a fault of the program ({fault}). The sheets show the "
                + "last text that could.", ("class", "torn"), ("role", "alert"));
        foreach (var file in desk.Files().Where(f => f.IsGone))
        {
            markup.Open("p", ("class", "torn"), ("role", "alert"));
            markup.Text($"{file.Name} is not on disk any more. The sheets show the text that was read last; saving it writes it again. ");
            markup.Inline("a", "Open it", ("href", site.To("plan", file.Name)));
            markup.Close();
        }
        foreach (var file in desk.Files().Where(f => f.Unreadable.Length > 0))
            markup.Element("p", $"{file.Name} on disk cannot be read: {file.Unreadable}. The sheets show the text that was read last, and "
                + "nothing is written over.", ("class", "torn"), ("role", "alert"));
        foreach (var file in desk.Files().Where(f => f.IsTorn))
        {
            markup.Open("p", ("class", "torn"), ("role", "alert"));
            markup.Text($"{file.Name} was changed outside in the same lines as here. Nothing was written over. ");
            markup.Inline("a", "Choose", ("href", site.To("plan", file.Name)));
            markup.Close();
        }
    }

    /// <summary>Says that the sheets are of the text before, while a text is judged for long or where that was broken off.</summary>
    private void JudgingGoesOn()
    {
        if (desk.Current is null) return;
        var isBrokenOff = desk.Works.IsBrokenOff(PlanDesk.JudgingPlace);
        if (!isBrokenOff && !(desk.Running?.Age >= PlanDesk.SaysItJudgesAfter)) return;
        markup.Open("div", ("class", "torn"));
        if (isBrokenOff)
        {
            markup.Element("p", "Judging the text was broken off; the sheets show the last text that was judged.");
            Steer(markup, "Judge it now", "resume", PlanDesk.JudgingPlace);
        }
        else
        {
            Waiting(markup, "The text is being judged; the sheets show the one before.", PlanDesk.JudgingPlace);
        }
        markup.Close();
    }

    private void ListOfSheets()
    {
        markup.Open("nav", ("id", "register"), ("aria-label", "list of sheets"));
        markup.Element("p", "Sheets", ("class", "small"));
        markup.Open("ol");
        var number = 0;
        foreach (var listed in Register.Listed)
        {
            markup.Open("li");
            markup.Open("a", ("href", site.To(listed.Key)), ("aria-current", listed == entry ? "page" : "false"));
            markup.Inline("b", Numerals.Whole(++number));
            markup.Inline("span", listed.Title);
            if (CountOf(listed) is { } count) markup.Inline("i", count.Words, ("class", count.IsAlert ? "alert" : "soft"));
            markup.Close();
            markup.Close();
        }
        markup.Close();
        markup.Open("form", ("action", site.To("find")), ("role", "search"));
        markup.Element("label", "Device, port, cable, part or code", ("for", "q"));
        markup.Leaf("input", ("id", "q"), ("name", "q"), ("type", "search"), ("autocomplete", "off"), ("maxlength", "200"));
        markup.Close();
        markup.Element("p", "/ search · 1 to 9 and 0 sheets · n p next, previous · g the plan · w whole drawings · Tab, then "
            + "arrows, on a drawing",
            ("class", "keys"));
        markup.Close();
    }

    private (string Words, bool IsAlert)? CountOf(RegisterEntry listed)
    {
        if (desk.Current is not { } now) return null;
        var errors = now.Judged.Findings.Count(f => f.Severity == Severity.Error);
        var typed = desk.Files().Count(f => f.IsTyped);
        return listed.Key switch
        {
            "findings" when errors > 0 => (Numerals.Grouped(errors), true),
            "compare" or "plan" when typed > 0 => ("unsaved", false),
            _ => null,
        };
    }

    /// <summary>The strip at the foot that stays in sight: which plan, what it comes to, and which sheet this is.</summary>
    private void TitleBlock()
    {
        markup.Open("footer", ("id", "block"), ("aria-label", "title block"));
        var side = SheetSides.Read(request.Query[SheetSides.Key].ToString(), entry?.Choice ?? SideChoice.None);
        new WhatIfStrip(markup, desk, site).Write(entry, request.PathBase + request.Path.ToUriComponent(), side);
        markup.Open("dl");
        var judged = desk.Current?.Judged;
        Cell("plan", judged?.Plan?.Title is { Length: > 0 } title ? title : judged?.Plan?.Name ?? desk.First, "wide");
        if (judged?.Designed is { } designed)
        {
            var summary = PlanSummary.Of(designed);
            Cell("revision", designed.Plan.Revision, "");
            Cell("date", designed.Plan.Date, "");
            Cell(designed.Plan.Currency + " to buy", Numerals.Grouped(summary.Price.Units), "", site.To("why", "price"));
            Cell("kW at most", Numerals.Grouped((decimal)(summary.Power.Value / 1000), 1), "", site.To("why", "power"));
            Cell("links pass", Numerals.Grouped(summary.Passing), "", site.To("why", "verdicts"));
            Cell("unproven", Numerals.Grouped(summary.Unproven), "", site.Asking("links", "unproven"));
            Cell("fail", Numerals.Grouped(summary.Failing), summary.Failing > 0 ? "act" : "", site.Asking("links", "fail"));
        }
        if (judged is not null) Counts(judged.Findings);
        if (judged is { RulesWaiting: > 0 and var waiting }) Cell("rules that wait", Numerals.Grouped(waiting), "act", site.To("findings"));
        var typed = desk.Files().Where(f => f.IsTyped).Select(f => f.Name).ToList();
        Cell("text", typed.Count == 0 ? "as saved" : "not saved: " + string.Join(", ", typed), typed.Count == 0 ? "" : "typed",
            site.To("compare"));
        Cell("sheet", Number(), "");
        markup.Close();
        markup.Close();
    }

    private void Counts(IEnumerable<Finding> findings)
    {
        var counts = findings.CountBy(f => f.Severity).ToDictionary();
        var errors = counts.GetValueOrDefault(Severity.Error);
        Cell("errors", Numerals.Grouped(errors), errors > 0 ? "act" : "", site.To("findings"));
        Cell("warnings", Numerals.Grouped(counts.GetValueOrDefault(Severity.Warning)), "", site.To("findings"));
    }

    private string Number()
    {
        var at = entry is null ? -1 : Register.Listed.IndexOf(entry);
        return at < 0 ? "detail" : $"{Numerals.Whole(at + 1)} of {Numerals.Whole(Register.Listed.Length)}";
    }

    private void Cell(string label, string value, string style, string address = "")
    {
        if (value.Length == 0) return;
        markup.Open("div", ("class", style));
        markup.Element("dt", label);
        markup.Open("dd");
        if (address.Length > 0) markup.Inline("a", value, ("href", address));
        else markup.Text(value);
        markup.Close();
        markup.Close();
    }
}
