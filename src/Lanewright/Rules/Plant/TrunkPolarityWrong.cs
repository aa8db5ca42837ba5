using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Plant;

/// <summary>Trunks through which transmitters do not meet receivers, lane by lane.</summary>
internal sealed class TrunkPolarityWrong() : Rule("LW4202", nameof(TrunkPolarityWrong))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var state in judgement.Plant.Value.Trunks.Where(t => t.Polarity.Verdict == Verdict.Fail))
        {
            var parts = string.Join(", ", state.Trunk.Chain.Select(p => p.Name));
            judgement.Add(this, state.Trunk.Span,
                $"'{state.Trunk.Name}' of {parts}: {string.Join("; ", state.Polarity.Reasons)}; take another method or type of cable",
                state.Trunk.Name, state.Trunk.Count);
        }
    }
}
