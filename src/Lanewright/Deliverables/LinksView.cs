using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Deliverables;

/// <summary>The classes of links with their verdicts: a row a way of making links.</summary>
public static class LinksView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("links",
    [
        new("class", 8), new("set", 22), new("links", 9, ColumnKind.Whole), new("rate", 8), new("medium", 8), new("type", 24),
        new("made-with", 48),
        new("length-m", 9, ColumnKind.Real), new("verdict", 10), new("mark", 16), new("loss-db", 9, ColumnKind.Real),
        new("limit-db", 9, ColumnKind.Real),
        new("margin-db", 10, ColumnKind.Real), new("latency-ns", 11, ColumnKind.Real), new("price-a-link", 12, ColumnKind.Money),
        new("watts-a-link", 12, ColumnKind.Real),
    ], () => Rows(designed));

    private static IEnumerable<Cell[]> Rows(DesignedPlan designed)
    {
        foreach (var choice in designed.Design.Choices)
        {
            for (var share = 0; share < choice.Shares.Length; share++)
            {
                var solution = choice.Shares[share].Solution;
                var loss = solution.Checks.FirstOrDefault(c => c.Name is CheckNames.ChannelLoss or CheckNames.CopperLoss);
                yield return
                [
                    Identifiers.Class(choice.Class.Index, share), choice.Class.SetNames,
                    choice.Shares[share].Links, choice.Class.Statement.Rate.ToString(),
                    solution.MediumName, solution.TypeName, solution.Name, solution.Length.Metres,
                    Checks.Word(solution.Verdict), Marks.Name(solution.Mark),
                    Number(loss?.Value), Number(loss?.Limit), Number(loss?.Margin), Math.Round(solution.Latency.Value.Nanoseconds, 1),
                    solution.Price.Units, solution.Power.Value,
                ];
            }
            var link = choice.Class;
            if (choice.Shares.IsEmpty) yield return Unmade(link.Index, link.SetNames, link.Count, link.Statement.Rate.ToString());
        }
        if (designed.Plan.Lines.IsEmpty) yield break;
        foreach (var row in OfLines(designed)) yield return row;
    }

    /// <summary>Each route of a line is a class of its own.</summary>
    private static IEnumerable<Cell[]> OfLines(DesignedPlan designed)
    {
        foreach (var line in designed.Lines.Value.Lines)
        {
            for (var i = 0; i < line.Routes.Length; i++)
            {
                var route = line.Routes[i];
                var design = route.Answer.Design;
                var channels = line.Statement.Channels;
                var osnr = design.Checks.FirstOrDefault(c => c.Name is LineCheckNames.Osnr or LineCheckNames.GreyLink);
                yield return
                [
                    Identifiers.Line(line.Statement.Index, i), line.Statement.Name, channels, line.Statement.Rate.ToString(), "line",
                    design.TypeName, $"{LineWords.Name(design.Scheme)} over {route.Name}", Math.Round(route.Length.Metres, 1),
                    Checks.Word(route.Verdict), Marks.Name(design.Mark), Math.Round(route.Answer.Question.SpanLoss.Value, 3), Cell.Empty,
                    Number(design.Worst?.Margin?.Value ?? osnr?.Margin),
                    design.Latency is { } latency ? Math.Round(latency.Value.Nanoseconds, 1) : Cell.Empty,
                    route.Answer.Price?.Total is { } price
                        ? Math.Round(price.Units / Math.Max(1, channels), 2) : Cell.Empty,
                    Cell.Empty,
                ];
            }
        }
    }

    private static Cell[] Unmade(int index, string set, int count, string rate)
    {
        var row = new Cell[16];
        Array.Fill(row, Cell.Empty);
        row[0] = Identifiers.Class(index, 0);
        row[1] = set;
        row[2] = count;
        row[3] = rate;
        row[6] = "nothing found";
        row[8] = Checks.Word(Verdict.Fail);
        return row;
    }

    private static Cell Number(double? value) => value is { } v ? Math.Round(v, 3) : Cell.Empty;
}
