using System.Collections.Immutable;
using Lanewright.Engineering.Fabrics;
using Lanewright.Findings;
using Lanewright.Model;

namespace Lanewright.Rules;

/// <summary>What became of a question about a fabric: findings in any case, and the study where the question could be read.</summary>
/// <param name="Plan">The plan it was asked in; null when nothing could be made of its file.</param>
/// <param name="Study">The answer; null when the question holds errors or nothing was asked.</param>
/// <param name="Findings">What is wrong with the plan or the question, in the order of the text.</param>
public sealed record SizedPlan(Plan? Plan, FabricStudy? Study, ImmutableArray<Finding> Findings)
{
    /// <summary>Whether any finding is an error.</summary>
    public bool HasErrors => Findings.Any(f => f.Severity == Severity.Error);
}
