using Lanewright.Deliverables;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>A finding on a sheet: its rule, its line in the plan, and what it is about.</summary>
internal static class FindingWords
{
    /// <summary>Writes it as an item of a list.</summary>
    /// <param name="paper">The sheet.</param>
    /// <param name="finding">The finding.</param>
    /// <param name="was">What it was in the text as saved; null where that is not told.</param>
    public static void Item(SheetPaper paper, Finding finding, Finding? was = null)
    {
        var markup = paper.Markup;
        markup.Open("li", ("class", FindingsView.Word(finding.Severity)));
        markup.Inline("b", FindingsView.Word(finding.Severity), ("class", finding.Severity switch
        {
            Severity.Error => "stop",
            Severity.Warning => "open",
            _ => "soft",
        }));
        markup.Text(" ");
        paper.Way($"{finding.Kind.Code} {finding.Kind.Name}", paper.Site.To("rules", finding.Kind.Code));
        if (AddressOf(paper, finding) is { Length: > 0 } address)
        {
            markup.Text(" ");
            paper.Way($"{finding.Span.Path}:{Numerals.Whole(finding.Span.Position.Line)}", address);
        }
        Where(paper, finding.Subject);
        markup.Element("p", finding.Message);
        if (was is not null)
            markup.Element("p", (was.Severity == finding.Severity ? "as saved: " : $"as saved, {FindingsView.Word(was.Severity)}: ")
                + was.Message, ("class", "small soft"));
        if (finding.Evidence is { } evidence) markup.Element("p", evidence.ToString(), ("class", "small soft"));
        markup.Close();
    }

    /// <summary>The thing itself, on its page and on the drawing.</summary>
    private static void Where(SheetPaper paper, string subject)
    {
        if (subject.Length == 0) return;
        paper.Markup.Text(" ");
        if (paper.Now.Places?.OfSubject(subject) is not { } found)
        {
            paper.Markup.Inline("a", "where", ("href", paper.Site.Asking("find", subject)), ("aria-label", "where " + subject));
            return;
        }
        paper.Markup.Inline("a", subject, ("href", paper.Site.To(found.Page)));
        if (found.Drawing is not { } drawing) return;
        paper.Markup.Text(" ");
        paper.Markup.Inline("a", "on the drawing", ("href", paper.Site.To(drawing)), ("aria-label", subject + " on the drawing"));
    }

    /// <summary>Where its line is edited; empty for a finding no line says, or one in a file that is not of the plan's folder.</summary>
    public static string AddressOf(SheetPaper paper, Finding finding) =>
        finding.Span.Source is not null && paper.Now.Files.Contains(finding.Span.Path)
            ? paper.Site.To("plan", finding.Span.Path) + "#L" + Numerals.Whole(finding.Span.Position.Line)
            : "";
}
