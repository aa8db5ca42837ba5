using System.Collections.Immutable;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Findings;

namespace Lanewright.Rules.Lines;

/// <summary>A rule about comparisons that every line goes through. It speaks of designs that pass or whose scheme the plan names; where no
/// scheme works, the rule that says so speaks alone.</summary>
internal abstract class LineCheckRule(
    string code, string name, ImmutableArray<string> checks, string cure, Severity severity = Severity.Error)
    : Rule(code, name, severity)
{
    /// <inheritdoc/>
    public sealed override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Lines.IsEmpty) return;
        foreach (var line in judgement.Lines.Value.Lines)
        {
            var failing =
                from route in line.Routes
                where line.Statement.Scheme.Length > 0 || route.Answer.Design.Verdict == Verdict.Pass
                from check in route.Answer.Design.Checks
                where checks.Contains(check.Name) && check.Verdict == Verdict.Fail
                orderby check.Margin
                select (route, check);
            foreach (var (route, check) in failing.Take(1))
                judgement.Add(this, line.Statement.Span,
                    $"'{line.Statement.Name}' over {route.Name}: {LineWords.Describe(check)}; {cure}", line.Statement.Name,
                    failing.Select(f => f.route).Distinct().Count(), Kind.Severity,
                    new Evidence(check.Name, check.Value, check.Limit, check.Unit, check.Source));
        }
    }
}
