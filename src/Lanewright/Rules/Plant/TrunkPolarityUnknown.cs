using Lanewright.Engineering.Links;
using Lanewright.Findings;

namespace Lanewright.Rules.Plant;

/// <summary>Trunks whose port order nobody read.</summary>
internal sealed class TrunkPolarityUnknown() : Rule("LW4203", nameof(TrunkPolarityUnknown), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var state in judgement.Plant.Value.Trunks.Where(t => t.Ports > 0 && t.Polarity.Verdict != Verdict.Fail))
        {
            if (state.Polarity.Verdict == Verdict.Pass && state.Trunk.IsOrderKnown) continue;
            judgement.Add(this, state.Trunk.Span,
                $"'{state.Trunk.Name}': {string.Join("; ", state.Polarity.Reasons)}; patch by the labels of the cassettes and note the "
                + "port map",
                state.Trunk.Name, state.Trunk.Count);
        }
    }
}
