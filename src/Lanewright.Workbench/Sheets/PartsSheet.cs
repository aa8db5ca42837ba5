using Lanewright.Deliverables;

namespace Lanewright.Workbench.Sheets;

/// <summary>The parts list; a model leads to its places.</summary>
internal static class PartsSheet
{
    private const int MostRows = 2000;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        if (paper.Judged.Designed is not { } designed) return paper.Nothing("Parts", "The plan cannot be read yet.");
        if (designed.Parts.IsEmpty) return paper.Nothing("Parts", "The plan needs no part.");
        paper.Heading("Parts", "A model leads to its places. Prices marked invented are placeholders until a quotation replaces them.");
        var view = PartsView.Of(designed);
        if (paper.Query.Length > 0)
        {
            paper.Markup.Open("p");
            paper.Markup.Text($"Only '{paper.Query}'. ");
            paper.Way("All parts", paper.Site.To("parts"));
            paper.Markup.Close();
            view = view with
            {
                Rows = () => PartsView.Of(designed).Rows().Where(r => r[0].Text == paper.Query || r[2].Text == paper.Query),
            };
        }
        PaperTable.Write(paper.Markup, view, $"prices in {designed.Plan.Currency}", MostRows,
            (column, text) => column == "model" ? paper.Site.Asking("find", text) : "");
        return true;
    }
}
