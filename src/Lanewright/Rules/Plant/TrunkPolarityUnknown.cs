using Lanewright.Engineering.Links;
using Lanewright.Findings;

namespace Lanewright.Rules.Plant;

/// <summary>Ways through trunks whose fibres nobody can follow.</summary>
internal sealed class TrunkPolarityUnknown() : Rule("LW4203", nameof(TrunkPolarityUnknown), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var way in judgement.Plant.Value.Ways.Where(w => w.Polarity.Verdict == Verdict.Unproven))
        {
            var statement = judgement.Plan.Statements[way.Statement];
            judgement.Add(this, statement.Span,
                $"'{statement.Name}' through {way.Way.Name}: {string.Join("; ", way.Polarity.Reasons)}; patch by the labels of the "
                + "cassettes and note the port map",
                statement.Name, way.Links);
        }
    }
}
