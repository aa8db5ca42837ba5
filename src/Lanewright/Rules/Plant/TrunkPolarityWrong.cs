using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Plant;

/// <summary>Ways through trunks on which transmitters do not meet receivers, lane by lane, whichever cords are bought; and trunks in
/// wait, of which none could be patched so.</summary>
internal sealed class TrunkPolarityWrong() : Rule("LW4202", nameof(TrunkPolarityWrong))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var way in judgement.Plant.Value.Ways.Where(w => w.Polarity.Verdict == Verdict.Fail))
        {
            var statement = judgement.Plan.Statements[way.Statement];
            judgement.Add(this, statement.Span,
                $"'{statement.Name}' through {way.Way.Name}: {string.Join("; ", way.Polarity.Reasons)}, whichever cords are bought; "
                + "take trunks of another method or type",
                statement.Name, way.Links);
        }
        foreach (var state in judgement.Plant.Value.Trunks.Where(t => t.Ways.IsEmpty && t.Alone.Verdict == Verdict.Fail))
        {
            judgement.Add(this, state.Trunk.Span,
                $"'{state.Trunk.Name}' of {string.Join(", ", state.Trunk.Parts.Select(p => p.Words))}: "
                + $"{string.Join("; ", state.Alone.Reasons)}, whichever cords are bought; take another method or type",
                state.Trunk.Name, state.Trunk.Count);
        }
    }
}
