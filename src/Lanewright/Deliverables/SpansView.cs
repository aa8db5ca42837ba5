using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Lines;
using Lanewright.Model.Lines;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>The schedule of fibre between sites: a row a span, with the lines on it.</summary>
public static class SpansView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("spans",
    [
        new("span", 16), new("from", 14), new("to", 14), new("length-km", 10, ColumnKind.Real), new("fibre", 9),
        new("loss-db", 9, ColumnKind.Real), new("measured", 9), new("connectors", 10, ColumnKind.Whole),
        new("splices", 8, ColumnKind.Whole), new("pairs", 7, ColumnKind.Whole), new("pairs-used", 9, ColumnKind.Whole),
        new("ducts", 24), new("lines", 30),
    ], () => designed.Plan.Spans.Select(s => Row(designed.Lines.Value, s)));

    private static Cell[] Row(LineBook book, FibreSpan span)
    {
        var over = book.Lines.Where(l => l.Routes.Any(r => r.Spans.Contains(span))).ToList();
        var loss = over.SelectMany(l => l.Routes).Where(r => r.Spans.Contains(span))
            .Select(r => r.Answer.Question.Spans[r.Spans.IndexOf(span)].Loss.Value).Select(l => (double?)Math.Round(l, 2)).FirstOrDefault();
        return
        [
            span.Name, span.From.Name, span.To.Name, Math.Round(span.Length.Kilometres, 3), span.Fibre.Name,
            (loss ?? (span.MeasuredLoss is { } measured ? Math.Round(measured.Value, 2) : null)) is { } known ? known : Cell.Empty,
            span.MeasuredLoss is null ? "no" : "yes", span.Connectors, span.Splices, span.Pairs, book.PairsUsed(span),
            string.Join(", ", span.Ducts), string.Join(", ", over.Select(l => l.Statement.Name)),
        ];
    }
}
