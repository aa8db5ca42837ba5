using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Plant;

/// <summary>Trunks measured worse than any edition of the cabling test allows.</summary>
internal sealed class TrunkLossAboveTest() : Rule("LW4209", nameof(TrunkLossAboveTest), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var state in judgement.Plant.Value.Trunks)
        {
            if (!state.IsAboveEveryTest || state.Trunk.MeasuredLoss is not { } measured) continue;
            if (state.LoosestTest is not { Limit: { } limit } loosest) continue;
            judgement.Add(this, state.Trunk.Span,
                $"'{state.Trunk.Name}' was measured at {measured} and the cabling standard ({loosest.Title}) allows "
                + $"{Numerals.Shown(limit.Value, "dB")}; clean and inspect its ends, then measure again",
                state.Trunk.Name, state.Trunk.Count, Kind.Severity, new Evidence("loss", measured.Value, limit.Value, "dB", limit.Source));
        }
    }
}
