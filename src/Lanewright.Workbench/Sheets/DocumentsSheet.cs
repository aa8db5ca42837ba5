using Lanewright.Deliverables;

namespace Lanewright.Workbench.Sheets;

/// <summary>The documents that <c>build</c> writes, to be kept one by one.</summary>
internal static class DocumentsSheet
{
    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        paper.Heading("Documents", "As 'lanewright build' writes them, of the text as it is now.");
        var names = DeliverySet.Of(paper.Judged).Select(d => d.Name).ToList();
        List(paper, "To buy and to build from", names.Where(n => !n.Contains('/')));
        List(paper, "Drawings", names.Where(n => n.Contains('/')));
        return true;
    }

    private static void List(SheetPaper paper, string heading, IEnumerable<string> names)
    {
        paper.Markup.Element("h2", heading);
        paper.Markup.Open("p", ("class", "list"));
        foreach (var name in names)
        {
            paper.Way(name, paper.Site.To("files", name));
            paper.Markup.Text(" ");
        }
        paper.Markup.Close();
    }
}
