using Lanewright.Engineering.Plant;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Plant;

/// <summary>More trunks than links and their growth need.</summary>
internal sealed class TrunksIdle() : Rule("LW4210", nameof(TrunksIdle), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Standards.Cabling("trunk", "growth") is not { } growth) return;
        foreach (var state in judgement.Plant.Value.Trunks.Where(t => !t.Trunk.IsExisting))
        {
            var share = state.Trunk.Growth ?? Share.FromPercent(growth.Value);
            var needed = Math.Max(1, TrunkNeed.Trunks(state.Trunk.PortsEach, state.Ports, share));
            if (state.Trunk.Count <= needed) continue;
            judgement.Add(this, state.Trunk.Span,
                $"{state.Trunk.Count} trunks '{state.Trunk.Name}' are laid, {state.InUse} are in use and {needed} would do with "
                + $"{Numerals.Plain(share.Percent)} % of growth; lay fewer, or write the 'growth' they are for",
                state.Trunk.Name, state.Trunk.Count - needed);
        }
    }
}
