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
            if (state.Trunk.MeasuredLoss is not { } measured) continue;
            var loosest = state.LoosestTest;
            if (loosest?.Limit is not { } limit || !Rounding.IsAbove(measured.Value, limit.Value)) continue;
            judgement.Add(this, state.Trunk.Span,
                $"'{state.Trunk.Name}' was measured at {measured} and edition {loosest.Edition} of the cabling standard allows "
                + $"{Numerals.Shown(limit.Value, "dB")}; clean and inspect its ends, then measure again",
                state.Trunk.Name, state.Trunk.Count, Kind.Severity, new Evidence("loss", measured.Value, limit.Value, "dB", limit.Source));
        }
    }
}
