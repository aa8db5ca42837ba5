using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Quantities;
using Lanewright.Workbench.Desk;

namespace Lanewright.Workbench.Sheets;

/// <summary>The strip above the title block while something is typed and not saved: what it changes, which of the two the sheet shows, and
/// what to do with it.</summary>
internal sealed class WhatIfStrip(MarkupWriter markup, PlanDesk desk, Site site)
{
    private static readonly ImmutableArray<(SheetSide Side, string Words)> Sides =
        [(SheetSide.Typed, "typed"), (SheetSide.Saved, "saved"), (SheetSide.Both, "both")];

    /// <summary>Writes it; nothing where nothing is typed.</summary>
    /// <param name="entry">The kind of sheet; null for none.</param>
    /// <param name="address">Address of the sheet, without what it is asked beside its thing.</param>
    /// <param name="side">Which of the two texts the sheet shows.</param>
    public void Write(RegisterEntry? entry, string address, SheetSide side)
    {
        var typed = desk.Files().Where(f => f.IsTyped).ToList();
        if (typed.Count == 0 || desk.Current is not { } now) return;
        markup.Open("section", ("id", "whatif"), ("aria-label", "what if"));
        foreach (var file in typed)
            markup.Inline("i", "", ("hidden", "hidden"), ("data-file", file.Name), ("data-version", Numerals.Whole(file.Version)));
        markup.Open("p", ("class", "name"));
        markup.Inline("a", "What if", ("href", site.To("compare")));
        markup.Close();
        if (now.Compared is { IsCompletedSuccessfully: true } done) Figures(done.Result);
        else markup.Element("p", "The text on disk is being worked out to be held against.", ("class", "soft"));
        if (entry is { Choice: not SideChoice.None }) Choice(entry.Choice, address, side);
        else if (entry is { IsListed: true, Key: not "compare" })
            markup.Element("p", "Lines that differ: on What if.", ("class", "soft"));
        markup.Inline("button", "Keep", ("type", "button"), ("data-act", "save"));
        markup.Inline("button", "Give up", ("type", "button"), ("data-act", "discard"));
        markup.Close();
    }

    private void Figures(WhatIf both)
    {
        var (before, after) = (both.Before, both.After);
        markup.Open("dl");
        if (before.Summary is { } a && after.Summary is { } b)
        {
            Figure(after.Currency + " to buy", a.Price.Units, b.Price.Units, both.IsFair);
            Figure("kW at most", (decimal)(a.Power.Value / 1000), (decimal)(b.Power.Value / 1000), both.IsFair, 1);
        }
        if (both.IsFair && before.LeastMargin is { } was && after.LeastMargin is { } isNow)
            Figure("least margin, dB", (decimal)was, (decimal)isNow, isFair: true, 2);
        Figure("errors", before.Errors, after.Errors, isFair: true, alertAbove: before.Errors);
        if (both.IsFair) Figure("warnings", before.Warnings, after.Warnings, isFair: true);
        markup.Close();
        // Where the figures cannot be held against one another, why stands in the room of those that would look like a gain.
        if (!both.IsFair)
            markup.Element("p", WaitingRules.Short(Math.Max(before.RulesWaiting, after.RulesWaiting)), ("class", "alert wide"));
    }

    private void Figure(string name, decimal before, decimal after, bool isFair, int decimals = 0, int alertAbove = int.MaxValue)
    {
        var difference = WhatIf.Difference(before, after, decimals);
        markup.Open("div", ("class", after > alertAbove ? "alert" : ""));
        markup.Element("dt", name);
        markup.Open("dd");
        if (difference.Length == 0)
        {
            markup.Text($"{Numerals.Grouped(after, decimals)}, the same");
        }
        else
        {
            markup.Text($"{Numerals.Grouped(before, decimals)} → {Numerals.Grouped(after, decimals)} ");
            if (isFair) markup.Inline("b", difference);
        }
        markup.Close();
        markup.Close();
    }

    private void Choice(SideChoice choice, string address, SheetSide side)
    {
        markup.Open("nav", ("class", "tabs"), ("aria-label", "which text the sheet shows"));
        foreach (var (one, words) in Sides.Where(s => choice == SideChoice.Beside || s.Side != SheetSide.Both))
            markup.Inline("a", words, ("href", one == SheetSide.Typed ? address : $"{address}?{SheetSides.Key}={SheetSides.Word(one)}"),
                ("class", "stay"), ("aria-current", one == side ? "page" : "false"));
        markup.Close();
    }
}
