using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Lines;

/// <summary>A line that cannot be proved to work.</summary>
internal sealed class LineUnproven() : LineRule("LW5122", nameof(LineUnproven))
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        foreach (var route in line.Routes.Where(r => r.Answer.Design.Verdict == Verdict.Unproven).Take(1))
            Say(judgement, line, $"over {route.Name} it cannot be proved to work: "
                + $"{LineWords.Reason(route.Answer.Design, line.Statement.LeastMargin)}; state what is "
                + "missing, or take a type whose limits are known");
    }
}
