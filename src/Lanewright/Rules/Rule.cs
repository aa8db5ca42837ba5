using Lanewright.Findings;

namespace Lanewright.Rules;

/// <summary>A result held against what an architect wants. A rule has no formula of its own.</summary>
public abstract class Rule
{
    /// <summary>Takes its code, its name and the weight of its findings.</summary>
    protected Rule(string code, string name, Severity severity = Severity.Error)
    {
        Kind = new FindingKind(code, name, severity);
    }

    /// <summary>What it finds.</summary>
    public FindingKind Kind { get; }

    /// <summary>Whether it waits until reading and binding find no error: what a network is and carries can only be judged of a plan that
    /// is whole.</summary>
    public virtual bool NeedsWholePlan => false;

    /// <summary>Judges a design.</summary>
    public abstract void Judge(Judgement judgement);
}
