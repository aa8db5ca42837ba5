using Lanewright.Engineering.Lines;
using Lanewright.Findings;

namespace Lanewright.Rules.Lines;

/// <summary>A rule about a line as a whole.</summary>
internal abstract class LineRule(string code, string name, Severity severity = Severity.Error) : Rule(code, name, severity)
{
    /// <inheritdoc/>
    public sealed override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Lines.IsEmpty) return;
        foreach (var line in judgement.Lines.Value.Lines) Judge(judgement, line);
    }

    /// <summary>Judges one.</summary>
    protected abstract void Judge(Judgement judgement, LineResult line);

    /// <summary>Adds a finding about it.</summary>
    protected void Say(Judgement judgement, LineResult line, string message, Evidence? evidence = null) =>
        judgement.Add(this, line.Statement.Span, $"'{line.Statement.Name}': {message}", line.Statement.Name, 1, Kind.Severity, evidence);
}
