using System.Text;
using Lanewright.Deliverables;

namespace Lanewright.Workbench.Sheets;

/// <summary>The documents that <c>build</c> writes, to be kept one by one; a drawing can be looked at before.</summary>
internal static class DocumentsSheet
{
    private const string Drawing = ".svg";

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        var all = DeliverySet.Of(paper.Judged);
        if (paper.Thing.Length > 0) return One(paper, all.FirstOrDefault(d => d.Name == paper.Thing && d.Name.EndsWith(Drawing,
            StringComparison.Ordinal)));
        paper.Heading("Documents", "As 'lanewright build' writes them, of the text "
            + (paper.IsSaved ? "on disk." : "as it is now."));
        List(paper, all.Select(d => d.Name).Where(n => !n.Contains('/')));
        paper.Markup.Element("h2", "Drawings");
        // Drawings are named by what they are of and by what they show of it, such as K001-ladder.
        var drawings = all.Select(d => d.Name).Where(n => n.Contains('/')).GroupBy(Shows).ToList();
        foreach (var kind in drawings.Where(k => k.Key.Length > 0)) Kind(paper, kind.Key, kind);
        foreach (var rest in drawings.Where(k => k.Key.Length == 0)) Kind(paper, "others", rest);
        return true;
    }

    private static string Shows(string name)
    {
        var (plain, at) = (Plain(name), Plain(name).IndexOf('-', StringComparison.Ordinal));
        return at > 1 && char.IsUpper(plain[0]) && char.IsAsciiDigit(plain[1]) ? plain[(at + 1)..] : "";
    }

    private static string Plain(string name) => Path.GetFileNameWithoutExtension(name);

    private static void Kind(SheetPaper paper, string shows, IEnumerable<string> names)
    {
        paper.Markup.Open("p", ("class", "list kinds"));
        paper.Markup.Inline("b", DocumentWords.OfKind(shows));
        foreach (var name in names)
        {
            var words = shows == Shows(name) ? Plain(name)[..^(shows.Length + 1)] : Plain(name);
            paper.Markup.Inline("a", words, ("href", paper.Same(paper.Site.To("documents", name))), ("aria-label", Plain(name)));
            paper.Markup.Text(" ");
        }
        paper.Markup.Close();
    }

    private static void List(SheetPaper paper, IEnumerable<string> names)
    {
        paper.Markup.Element("h2", "To buy and to build from");
        var table = PaperTable.OpenNarrow(paper.Markup, "a document is kept by its name", "document", "what it holds");
        foreach (var name in names) table.Row(new Entry(name, paper.Same(paper.Site.To("files", name))), DocumentWords.OfFile(name));
        table.Close();
    }

    private static bool One(SheetPaper paper, Deliverable? drawing)
    {
        if (drawing is null) return paper.Unknown("Documents", $"There is no drawing '{paper.Thing}'.");
        paper.Heading(drawing.Name[(drawing.Name.IndexOf('/') + 1)..]);
        paper.Markup.Open("p", ("class", "list"));
        paper.Way("keep it", paper.Same(paper.Site.To("files", drawing.Name)));
        paper.Way("all documents", paper.Same(paper.Site.To("documents")));
        paper.Markup.Close();
        paper.Figure(() => paper.Markup.Trusted(InPage(drawing)));
        return true;
    }

    /// <summary>A drawing without what it needs as a file of its own: the page has its style.</summary>
    private static string InPage(Deliverable drawing)
    {
        using var stream = new MemoryStream();
        drawing.Write(stream);
        var text = Encoding.UTF8.GetString(stream.ToArray());
        text = text[text.IndexOf("<svg", StringComparison.Ordinal)..];
        var (from, to) = (text.IndexOf("<style>", StringComparison.Ordinal), text.IndexOf("</style>", StringComparison.Ordinal));
        return from < 0 || to < from ? text : text.Remove(from, to - from + "</style>".Length);
    }
}
