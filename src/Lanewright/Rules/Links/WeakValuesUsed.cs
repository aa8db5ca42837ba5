using Lanewright.Findings;
using Lanewright.Text;

namespace Lanewright.Rules.Links;

/// <summary>Verdicts that rest on values nobody has checked against the document.</summary>
internal sealed class WeakValuesUsed() : Rule("LW2704", nameof(WeakValuesUsed), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var weak = new SortedDictionary<string, long>(StringComparer.Ordinal);
        foreach (var (choice, solution) in judgement.Judged)
        {
            // The weakest mark of the whole would not do: a habit of the trade, such as a connection's loss, ranks below a weak value.
            if (!solution.Checks.Any(c => !c.IsAdvice && c.Mark == Mark.Weak)) continue;
            weak[solution.TypeName] = weak.GetValueOrDefault(solution.TypeName) + choice.Class.Count;
        }
        if (weak.Count == 0 || judgement.Plan.Sources.IsEmpty) return;
        var types = string.Join(", ", weak.Select(w => $"{w.Key} ({(w.Value == 1 ? "1 link" : $"{w.Value} links")})"));
        judgement.Add(this, judgement.Plan.Sources[0].Span(0, 0),
            $"verdicts on {types} rest on weakly known values; 'lanewright standards' shows which, "
            + "and the document should be checked before money is spent",
            count: weak.Values.Sum());
    }
}
