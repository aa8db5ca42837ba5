namespace Lanewright.Workbench.Sheets;

/// <summary>The text of the plan in an editor; its script fetches the text and marks what was found in it.</summary>
internal static class PlanSheet
{
    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        var name = paper.Thing.Length == 0 ? paper.Desk.First : paper.Thing;
        if (paper.Desk.StateOf(name) is not { } file)
            return paper.Unknown("Plan", $"'{name}' is no file of this plan. Only files that the plan reads, in its own "
                + "folder, are opened.");
        var markup = paper.Markup;
        paper.Heading("Plan");
        Tabs.Write(paper, "plan", [.. paper.Desk.Files().Select(f => (f.Name, f.Name + (f.IsTyped ? " *" : "")))], name);
        markup.Open("div", ("id", "editor"), ("data-file", file.Name));
        markup.Open("div", ("class", "bar"));
        foreach (var (key, words) in new[] { ("save", "Save"), ("discard", "Give up what is not saved"), ("next", "Next finding") })
            markup.Inline("button", words, ("type", "button"), ("data-act", key));
        markup.Inline("output", "", ("class", "said"), ("aria-live", "polite"));
        markup.Close();
        markup.Open("div", ("class", "torn"), ("hidden", "hidden"), ("role", "alert"));
        markup.Element("p", "This file was changed outside in the same lines since you began to type. Nothing was written over.");
        foreach (var (key, words) in new[] { ("discard", "Take the text on disk"), ("keep", "Keep mine; put the other aside when I save") })
            markup.Inline("button", words, ("type", "button"), ("data-act", key));
        markup.Close();
        markup.Open("div", ("class", "desk"));
        markup.Inline("div", "", ("class", "gutter"), ("aria-hidden", "true"));
        markup.Open("div", ("class", "field"));
        markup.Inline("div", "", ("class", "marks"), ("aria-hidden", "true"));
        markup.Inline("textarea", "", ("aria-label", "text of " + file.Name), ("spellcheck", "false"), ("autocapitalize", "off"),
            ("autocomplete", "off"), ("wrap", "off"), ("aria-autocomplete", "list"), ("aria-controls", "words"),
            ("aria-keyshortcuts", "Control+S F8 Control+Space"));
        markup.Inline("ul", "", ("class", "words"), ("id", "words"), ("role", "listbox"),
            ("aria-label", "what may stand here"), ("hidden", "hidden"));
        markup.Close();
        markup.Inline("p", "", ("class", "unseen here"), ("role", "status"));
        markup.Inline("ol", "", ("class", "found"), ("aria-label", "findings in this file"));
        markup.Close();
        markup.Element("p", "Ctrl S saves · Ctrl Z undoes · F8 next finding · Ctrl Space what may stand here · Escape leaves the text",
            ("class", "keys"));
        markup.Close();
        return true;
    }
}
