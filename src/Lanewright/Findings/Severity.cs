namespace Lanewright.Findings;

/// <summary>How much a finding weighs.</summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing has to change.</summary>
    Advice,

    /// <summary>Works, with a risk or a condition somebody must look at.</summary>
    Warning,

    /// <summary>Will not work, or cannot be proved to.</summary>
    Error,
}
