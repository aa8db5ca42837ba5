namespace Lanewright.Workbench.Sheets;

/// <summary>The sheets of one kind to choose from.</summary>
internal static class Tabs
{
    /// <summary>Writes them; nothing where there is no choice.</summary>
    public static void Write(SheetPaper paper, string sheet, IReadOnlyList<(string Name, string Words)> choices, string chosen)
    {
        if (choices.Count < 2) return;
        paper.Markup.Open("nav", ("class", "tabs"), ("aria-label", "sheets of this kind"));
        foreach (var (name, words) in choices)
            paper.Markup.Inline("a", words, ("href", paper.Site.To(sheet, name)), ("aria-current", name == chosen ? "page" : "false"));
        paper.Markup.Close();
    }
}
