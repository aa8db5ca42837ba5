using Lanewright.Engineering.Links;
using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>On the sheet What if, the links whose margin or verdict is another.</summary>
internal static class CompareLinks
{
    private const int MostRows = 200;

    /// <summary>Writes them; nothing where none changed.</summary>
    public static void Write(SheetPaper paper)
    {
        var (saved, typed) = (paper.Now.AsSaved, paper.Now);
        if (saved.Judged.Designed is not { } before || typed.Judged.Designed is not { } after) return;
        if (saved.Links is not { } was || typed.Links is not { } now) return;
        var changes = LinkChanges.Of(before, was, after, now);
        if (changes.Count == 0) return;
        paper.Markup.Element("h2", $"Links whose margin or verdict changed, {Numerals.Grouped(changes.Sum(c => (long)c.Links))}");
        var table = PaperTable.Open(paper.Markup, "by class as typed, the least margin first; links only one text has are not among them",
            "class", "set", "#links", "made with", "#margin as saved, dB", "#as typed", "#difference", "as saved", "as typed");
        foreach (var change in changes.Take(MostRows))
            table.Row(new Entry(change.Is.Name, paper.Site.To("classes", change.Is.Name)), change.Set, Numerals.Grouped(change.Links),
                change.Was.Made == change.Is.Made ? change.Is.Made : $"{change.Is.Made}, was {change.Was.Made}",
                Shown(change.Was.Margin), Shown(change.Is.Margin), Difference(change), Word(change.Was), Word(change.Is));
        table.Close();
        if (changes.Count > MostRows)
            paper.Markup.Element("p", $"{Numerals.Grouped(changes.Count - MostRows)} more groups of links changed.", ("class", "soft"));
    }

    private static string Shown(double? margin) => margin is { } value ? Numerals.Fixed(value, 2) : "";

    private static Entry Difference(LinkChange change) => change is { Was.Margin: { } was, Is.Margin: { } now }
        ? new Entry(WhatIf.Difference((decimal)was, (decimal)now, 2), "", "bold")
        : "";

    private static Entry Word(LinkKind kind) => new(kind.VerdictWord, "", kind.Verdict switch
    {
        Verdict.Fail => "stop",
        Verdict.Unproven => "open",
        _ => "",
    });
}
