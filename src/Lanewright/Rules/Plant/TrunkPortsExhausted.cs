using Lanewright.Quantities;

namespace Lanewright.Rules.Plant;

/// <summary>More links are patched through trunks than these have ports.</summary>
internal sealed class TrunkPortsExhausted() : Rule("LW4201", nameof(TrunkPortsExhausted))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var state in judgement.Plant.Value.Trunks.Where(t => t.Ports > t.Trunk.Ports))
        {
            var trunk = state.Trunk;
            var needed = (state.Ports + trunk.PortsEach - 1) / trunk.PortsEach;
            judgement.Add(this, trunk.Span,
                $"{Numerals.Grouped(state.Ports)} cables are patched through '{trunk.Name}', which has {Numerals.Grouped(trunk.Ports)} "
                + $"ports; write 'count: {Numerals.Whole(needed)}', or patch some links elsewhere",
                trunk.Name, state.Ports - trunk.Ports);
        }
    }
}
