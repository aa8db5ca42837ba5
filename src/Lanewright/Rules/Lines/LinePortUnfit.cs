using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Findings;

namespace Lanewright.Rules.Lines;

/// <summary>A module of a line that does not go with the cage it is to sit in.</summary>
internal sealed class LinePortUnfit() : LineRule("LW5136", nameof(LinePortUnfit))
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        var faults = line.Routes.SelectMany(r => r.Terminals.Checks).Where(c => c.Verdict != Verdict.Pass && !c.IsAdvice).ToList();
        if (faults.MaxBy(c => c.Verdict) is not { } worst) return;
        var isThereNone = worst is { Name: CheckNames.ModuleFit, Verdict: Verdict.Unproven };
        Say(judgement, line, $"{LineWords.Describe(worst)}; "
            + (isThereNone ? "describe one in a catalogue of your own, or let the line run a type that has one"
                : "name other ports, another module, or a device whose cages take it"),
            new Evidence(worst.Name, worst.Value, worst.Limit, worst.Unit, worst.Source)
            {
                Holds = worst is { Unit: "", Verdict: not Verdict.Unproven } ? false : null,
            });
    }
}
