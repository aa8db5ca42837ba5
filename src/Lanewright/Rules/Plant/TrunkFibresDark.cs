using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Plant;

/// <summary>Trunks in use of which many fibres carry no light.</summary>
internal sealed class TrunkFibresDark() : Rule("LW4207", nameof(TrunkFibresDark), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Standards.Cabling("trunk", "least-lit") is not { } least) return;
        foreach (var state in judgement.Plant.Value.Trunks.Where(t => !t.Trunk.IsDuplex && t.InUse > 0))
        {
            var fibres = state.InUse * state.Trunk.Fibres;
            if (state.FibresLit >= fibres * Share.FromPercent(least.Value).Value) continue;
            judgement.Add(this, state.Trunk.Span,
                $"of the {Numerals.Grouped(fibres)} fibres of the trunks in use of '{state.Trunk.Name}' "
                + $"{Numerals.Grouped(state.FibresLit)} carry light; "
                + "count on trunks whose arrays have as many positions as the modules have lanes both ways, or on duplex types",
                state.Trunk.Name, state.InUse);
        }
    }
}
