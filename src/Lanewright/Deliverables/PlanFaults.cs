using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>Errors of a plan that an answer about a part of it cannot pass over.</summary>
public static class PlanFaults
{
    /// <summary>How codes of rules about lines between sites begin.</summary>
    private const string CodesOfLines = "LW51";

    /// <summary>What could not be read or bound: it is missing from every answer. What rules find leaves an answer as it is.</summary>
    public static ImmutableArray<Finding> OfReading(IEnumerable<Finding> findings) =>
        [.. findings.Where(f => f.Severity == Severity.Error && IsOfReading(f))];

    /// <summary>The same, and what rules about lines between sites find.</summary>
    public static ImmutableArray<Finding> OfLines(IEnumerable<Finding> findings) =>
    [
        .. findings.Where(f => f.Severity == Severity.Error
            && (IsOfReading(f) || f.Kind.Code.StartsWith(CodesOfLines, StringComparison.Ordinal))),
    ];

    private static bool IsOfReading(Finding finding) => RuleBook.All.All(r => r.Kind != finding.Kind);
}
