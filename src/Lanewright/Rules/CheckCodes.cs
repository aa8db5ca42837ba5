using Lanewright.Findings;

namespace Lanewright.Rules;

/// <summary>Which kind of finding speaks of a failing comparison.</summary>
public static class CheckCodes
{
    /// <summary>The kind, or null for a comparison that is only advice.</summary>
    public static FindingKind? Of(string checkName) =>
        RuleBook.All.OfType<CheckRule>()
            .Where(r => r.CheckName == checkName && r.Kind.Severity == Severity.Error)
            .Select(r => r.Kind)
            .FirstOrDefault();
}
