using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Lines;

/// <summary>A span shorter than the straight line between its sites.</summary>
internal sealed class SpanShorterThanMap() : Rule("LW5134", nameof(SpanShorterThanMap), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var span in judgement.Plan.Spans)
        {
            if (span is not { From: { East: { } x1, North: { } y1 }, To: { East: { } x2, North: { } y2 } }) continue;
            var straight = Length.FromMetres(Math.Sqrt(Math.Pow((x2 - x1).Metres, 2) + Math.Pow((y2 - y1).Metres, 2)));
            if (span.Length >= straight) continue;
            judgement.Add(this, span.Span,
                $"'{span.Name}' is {Kilometres(span.Length)} long, and its sites lie {Kilometres(straight)} apart as the "
                + "crow flies; one of the two is wrong, and fibre is seldom less than a fifth longer", span.Name);
        }
    }

    private static string Kilometres(Length length) => Numerals.Shown(length.Kilometres, "km");
}
