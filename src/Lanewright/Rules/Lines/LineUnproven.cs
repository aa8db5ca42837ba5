using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Lines;

/// <summary>A line that cannot be proved to work.</summary>
internal sealed class LineUnproven() : LineRule("LW5122", nameof(LineUnproven))
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        foreach (var route in line.Routes.Where(IsForWantOfLimits).Take(1))
            Say(judgement, line, $"over {route.Name} it cannot be proved to work: "
                + $"{LineWords.Reason(route.Answer.Design, line.Statement.LeastMargin)}; state what is "
                + "missing, or take a type whose limits are known");
    }

    /// <summary>Of a margin that is too thin to prove anything another rule speaks.</summary>
    private static bool IsForWantOfLimits(LineRoute route) => route.Answer.Design is { Verdict: Verdict.Unproven } design
        && design.Checks.Any(c => c is { Verdict: Verdict.Unproven, IsAdvice: false } && c.Name != LineCheckNames.Reserve);
}
