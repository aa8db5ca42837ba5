using System.Collections.Immutable;
using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Deliverables.Report;

/// <summary>The classes of links as a table, each with the section that draws it.</summary>
internal sealed class ReportClasses(MarkupWriter markup, DesignedPlan designed, ImmutableArray<LinkWay> ways,
    ImmutableArray<LinkWay> drawn)
{
    /// <summary>More classes than this are left to the other documents.</summary>
    public const int MostRows = 400;

    /// <summary>Writes the table.</summary>
    public void Write()
    {
        markup.Element("h2", "Classes of links", ("id", "classes"));
        markup.Element("p", "Links alike are one class: the same set, the same kinds of ports, the same length to order. Classes drawn "
            + "alike share a drawing.", ("class", "soft"));
        var wayOf = ways
            .SelectMany(w => w.Members.Select(m => (m.Name, Way: w)))
            .ToDictionary(p => p.Name, p => p.Way, StringComparer.Ordinal);
        var shown = drawn.Select(w => w.Name).ToHashSet(StringComparer.Ordinal);
        var rows = Rows(wayOf, shown).ToList();
        var table = HtmlTable.Open(markup, "|class", "set", "#links", "|rate", "|medium", "type", "made with", "#length", "|verdict",
            "weakest mark", "#loss", "#limit", "#margin", "#price a link", "#power a link", "@drawn as");
        // What fails is never cut away.
        foreach (var (_, cells) in rows.OrderByDescending(r => r.Rank).Take(MostRows)) table.Row(cells);
        table.Close();
        if (rows.Count > MostRows)
            markup.Element("p", $"{Numerals.Grouped(rows.Count - MostRows)} more classes are in links.json and in the workbook. Those "
                + "with the worst verdicts are shown.", ("class", "soft"));
    }

    private IEnumerable<(Verdict Rank, LinkedText[] Cells)> Rows(Dictionary<string, LinkWay> wayOf, HashSet<string> shown)
    {
        var currency = designed.Plan.Currency;
        foreach (var choice in designed.Design.Choices)
        {
            var statement = choice.Class.Statement;
            if (choice.Shares.IsEmpty)
            {
                var row = new LinkedText[16];
                Array.Fill(row, "");
                (row[0], row[1], row[2], row[3]) = (Identifiers.Class(choice.Class.Index, 0), statement.Name,
                    Numerals.Grouped(choice.Class.Count), statement.Rate.ToString());
                (row[6], row[8]) = ("nothing found", ReportWords.Fails);
                yield return (Verdict.Fail, row);
            }
            for (var share = 0; share < choice.Shares.Length; share++)
            {
                var solution = choice.Shares[share].Solution;
                var name = Identifiers.Class(choice.Class.Index, share);
                var loss = solution.Checks.FirstOrDefault(c => c.Name is CheckNames.ChannelLoss or CheckNames.CopperLoss);
                var way = wayOf[name].Name;
                yield return (solution.Verdict,
                [
                    name, statement.Name, Numerals.Grouped(choice.Shares[share].Links), statement.Rate.ToString(), solution.MediumName,
                        solution.TypeName,
                    solution.Name, solution.Length.ToString(), ReportWords.Word(solution.Verdict), Marks.Name(solution.Mark),
                    ReportWords.Value(loss?.Value, "dB"), ReportWords.Value(loss?.Limit, "dB"), ReportWords.Value(loss?.Margin, "dB"),
                    $"{Numerals.Grouped(solution.Price.Units, 2)} {currency}", solution.Power.ToString(), shown.Contains(way) ? way : "",
                ]);
            }
        }
    }
}
