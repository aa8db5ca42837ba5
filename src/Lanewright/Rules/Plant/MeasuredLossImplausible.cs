using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Plant;

/// <summary>Trunks measured at less than their glass alone loses.</summary>
internal sealed class MeasuredLossImplausible() : Rule("LW4214", nameof(MeasuredLossImplausible), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var state in judgement.Plant.Value.Trunks)
        {
            if (state.Trunk.MeasuredLoss is not { } measured || state.Length is not { } length) continue;
            if (judgement.Plan.Standards.Fibre(state.Trunk.Cable.Fibre)?.LowestAttenuation is not { } least) continue;
            var glass = least.As(a => a * length.Kilometres);
            if (measured.Value > glass.Value) continue;
            judgement.Add(this, state.Trunk.Span,
                $"'{state.Trunk.Name}' is said to be measured at {measured}, and {length} of good fibre alone lose "
                + $"{Numerals.Shown(glass.Value, "dB")}; read the report of the test again",
                state.Trunk.Name, state.Trunk.Count, Kind.Severity, new Evidence("loss", measured.Value, glass.Value, "dB", glass.Source));
        }
    }
}
