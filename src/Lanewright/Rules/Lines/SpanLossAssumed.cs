using Lanewright.Engineering.Lines;
using Lanewright.Findings;

namespace Lanewright.Rules.Lines;

/// <summary>A line that rests on losses nobody measured.</summary>
internal sealed class SpanLossAssumed() : LineRule("LW5131", nameof(SpanLossAssumed), Severity.Advice)
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        var assumed = line.Routes.SelectMany(r => r.Spans).Where(s => s.MeasuredLoss is null).Select(s => s.Name).Distinct().ToList();
        if (assumed.Count == 0) return;
        Say(judgement, line, $"the loss of {string.Join(", ", assumed)} is reckoned and not measured; measure it before modules are "
            + "bought");
    }
}
