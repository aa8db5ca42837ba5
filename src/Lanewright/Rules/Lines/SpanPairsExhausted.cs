using Lanewright.Quantities;

namespace Lanewright.Rules.Lines;

/// <summary>A span with fewer pairs of fibres than its lines take.</summary>
internal sealed class SpanPairsExhausted() : Rule("LW5133", nameof(SpanPairsExhausted))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Lines.IsEmpty) return;
        foreach (var span in judgement.Plan.Spans)
        {
            var used = judgement.Lines.Value.PairsUsed(span);
            if (used <= span.Pairs) continue;
            judgement.Add(this, span.Span,
                $"lines take {Numerals.Whole(used)} pairs of '{span.Name}', and it has {Numerals.Whole(span.Pairs)}; put "
                + "their channels on one line, or lease more", span.Name);
        }
    }
}
