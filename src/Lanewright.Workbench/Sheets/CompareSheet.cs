using Lanewright.Findings;
using Lanewright.Quantities;
using Lanewright.Rules;
using Lanewright.Workbench.Desk;

namespace Lanewright.Workbench.Sheets;

/// <summary>What if: the plan as typed beside the plan as saved, with the difference.</summary>
internal static class CompareSheet
{
    private const int MostRows = 200;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        var typed = paper.Desk.Files().Where(f => f.IsTyped).Select(f => f.Name).ToList();
        if (typed.Count == 0)
            return NothingTyped(paper);
        paper.Heading("What if", $"The text as typed ({string.Join(", ", typed)}) beside the text on disk.");
        paper.Markup.Open("p");
        paper.Way("Save it or give it up on the sheet Plan", paper.Site.To("plan", typed[0]));
        paper.Markup.Close();
        var both = paper.Now.Both;
        WaitingRules.Say(paper, paper.Now.Saved, "as saved ");
        WaitingRules.Say(paper, paper.Judged, "as typed ");
        Figures(paper, both);
        Found(paper, "Findings that are new", both.New);
        Found(paper, "Findings that were not judged in the text as saved", both.NowJudged);
        Changed(paper, both.Changed);
        Found(paper, both.After.RulesWaiting > 0 ? "Findings that are gone, or hidden by the errors" : "Findings that are gone", both.Gone);
        Found(paper, "Findings that are not judged until the errors are mended", both.NotJudged);
        CompareLinks.Write(paper);
        Parts(paper, both.IsFair);
        foreach (var file in paper.Desk.Files().Where(f => f.IsTyped)) Lines(paper, file);
        return true;
    }

    private static bool NothingTyped(SheetPaper paper)
    {
        paper.Nothing("What if", "Nothing is typed that is not saved, so there is nothing to hold against the plan. Change its text: every "
            + "sheet then shows what would be, and this one the difference in price, power, margin, findings and parts, until you save it "
            + "or give it up.");
        paper.Markup.Open("p");
        paper.Way("Change the text of the plan", paper.Site.To("plan"));
        paper.Markup.Close();
        return true;
    }

    private static void Figures(SheetPaper paper, WhatIf both)
    {
        var (before, after) = (both.Before, both.After);
        if (before.Summary is not { } a || after.Summary is not { } b)
        {
            paper.Markup.Element("p", "One of the two texts cannot be read, so their figures cannot be held against one another.");
            return;
        }
        var table = PaperTable.Open(paper.Markup, both.IsFair
            ? "headline numbers"
            : "headline numbers; no difference is told while rules wait, since less is counted in the text with errors",
            "", "#as saved", "#as typed", "#difference");
        Row("devices", a.Devices, b.Devices);
        Row("links", a.Links, b.Links);
        Row("cables to lay", a.Cables, b.Cables);
        Row(after.Currency + " to buy", a.Price.Units, b.Price.Units);
        Row("W at most", (decimal)a.Power.Value, (decimal)b.Power.Value);
        Row("links pass", a.Passing, b.Passing);
        Row("links cannot be proved", a.Unproven, b.Unproven);
        Row("links fail", a.Failing, b.Failing);
        if (before.LeastMargin is { } worst && after.LeastMargin is { } now)
            Row("least margin of loss, dB", (decimal)worst, (decimal)now, 2);
        Row("errors", before.Errors, after.Errors, isToldAnyway: true);
        Row("warnings", before.Warnings, after.Warnings);
        table.Close();
        return;

        void Row(string name, decimal one, decimal other, int decimals = 0, bool isToldAnyway = false) => table.Row(name,
            Numerals.Grouped(one, decimals), Numerals.Grouped(other, decimals),
            new Entry(both.IsFair || isToldAnyway ? WhatIf.Difference(one, other, decimals) : "", "", "bold"));
    }

    private static void Found(SheetPaper paper, string heading, IReadOnlyList<Finding> findings)
    {
        if (findings.Count == 0) return;
        paper.Markup.Element("h2", $"{heading}, {Numerals.Grouped(findings.Count)}");
        paper.Markup.Open("ul", ("class", "wrong"));
        foreach (var finding in findings.OrderByDescending(f => f.Severity).Take(MostRows)) FindingWords.Item(paper, finding);
        paper.Markup.Close();
    }

    private static void Changed(SheetPaper paper, IReadOnlyList<(Finding Was, Finding Is)> findings)
    {
        if (findings.Count == 0) return;
        paper.Markup.Element("h2", $"Findings that say other numbers, {Numerals.Grouped(findings.Count)}");
        paper.Markup.Open("ul", ("class", "wrong"));
        foreach (var (was, now) in findings.OrderByDescending(f => f.Is.Severity).Take(MostRows)) FindingWords.Item(paper, now, was);
        paper.Markup.Close();
    }

    private static void Lines(SheetPaper paper, FileState file)
    {
        var changes = LineChanges.Of(file.Disk, file.Text);
        paper.Markup.Element("h2", $"Lines of {file.Name} that differ, {Numerals.Grouped(changes.Length)}");
        var table = PaperTable.Open(
            paper.Markup, "a line that is gone beside the one in its place", "#line", "as saved", "#line", "as typed");
        foreach (var change in changes.Take(MostRows))
            table.Row(Number(change.OldNumber), change.OldText.Trim(), Number(change.NewNumber), change.NewText.Trim());
        table.Close();
        if (changes.Length > MostRows)
            paper.Markup.Element("p", $"{Numerals.Grouped(changes.Length - MostRows)} more lines differ.", ("class", "soft"));

        static string Number(int line) => line > 0 ? Numerals.Whole(line) : "";
    }

    private static void Parts(SheetPaper paper, bool isFair)
    {
        static Dictionary<(string, string, string), (long Buy, decimal Price)> Of(JudgedPlan judged) => judged.Parts.ToDictionary(
            p => (p.Item.Name, p.Length?.ToString() ?? "", p.Type), p => (p.ToBuy, p.Total.Units));
        var (a, b) = (Of(paper.Now.Saved), Of(paper.Judged));
        var changed = a.Keys.Union(b.Keys).Where(k => a.GetValueOrDefault(k) != b.GetValueOrDefault(k))
            .OrderBy(k => k.Item1, Text.NaturalOrder.Instance).ThenBy(k => k.Item2, Text.NaturalOrder.Instance)
            .ThenBy(k => k.Item3, StringComparer.Ordinal).ToList();
        if (changed.Count == 0) return;
        var table = PaperTable.Open(paper.Markup, isFair
            ? "parts that differ"
            : "parts that differ; what stands in a line with an error is not counted, which saves nothing", "model", "type", "#length",
            "#to buy as saved", "#as typed", "#difference", "#difference in price");
        foreach (var key in changed.Take(MostRows))
        {
            var (one, other) = (a.GetValueOrDefault(key), b.GetValueOrDefault(key));
            table.Row(key.Item1, key.Item3, key.Item2, Numerals.Grouped(one.Buy), Numerals.Grouped(other.Buy),
                isFair ? WhatIf.Signed(other.Buy - one.Buy) : "", isFair ? WhatIf.Signed(other.Price - one.Price, 2) : "");
        }
        table.Close();
        if (changed.Count > MostRows)
            paper.Markup.Element("p", $"{Numerals.Grouped(changed.Count - MostRows)} more parts differ; the sheet Parts shows both lists "
                + "whole.", ("class", "soft"));
    }
}
