namespace Lanewright.Findings;

/// <summary>What a finding is an instance of. Codes are never reused; the ledger holds all of them.</summary>
/// <param name="Code">Such as <c>LW2201</c>.</param>
/// <param name="Name">The wrong state in one word, such as <c>LossBudgetExceeded</c>; also the name of its page.</param>
/// <param name="Severity">The weight it has unless a rule says otherwise.</param>
public sealed record FindingKind(string Code, string Name, Severity Severity);
