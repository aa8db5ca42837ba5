using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Lines;

/// <summary>A line that no scheme carries.</summary>
internal sealed class NoSchemeWorks() : LineRule("LW5121", nameof(NoSchemeWorks))
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        foreach (var route in line.Routes.Where(r => line.Statement.Scheme.Length == 0 && r.Answer.Design.Verdict == Verdict.Fail).Take(1))
            Say(judgement, line, $"no scheme works over {route.Name}; nearest comes {LineWords.Name(route.Answer.Design.Scheme)}, and "
                + $"{LineWords.Reason(route.Answer.Design, line.Statement.LeastMargin)}; 'lanewright line' shows why each was refused");
    }
}
