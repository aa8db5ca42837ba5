using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Findings;

namespace Lanewright.Rules.Links;

/// <summary>A link that works only with the attenuator Lanewright put into it.</summary>
internal sealed class AttenuatorAdded() : Rule("LW2416", nameof(AttenuatorAdded), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var (choice, solution) in judgement.Judged)
        {
            if (solution.Attenuator is not { } part || solution.Verdict == Verdict.Fail) continue;
            if (choice.Class.Statement.Attenuator is not null) continue;
            judgement.Add(this, choice,
                $"{Receiver(solution)} would get too much light; {part.Title} ({part.Name}) is in the parts list and has to be "
                + "fitted there before the link is lit");
        }
    }

    private static string Receiver(Solution solution) => solution.AttenuatorEnd switch
    {
        "from" => "the receiver at the first end",
        "to" => "the receiver at the second end",
        _ => "the receiver at each end",
    };
}
