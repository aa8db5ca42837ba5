using Lanewright.Engineering.Plant;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Plant;

/// <summary>Trunks that carry today's links and not their growth. Growth that the plan writes is wanted; growth that is usual is
/// advice.</summary>
internal sealed class TrunkGrowthShort() : Rule("LW4215", nameof(TrunkGrowthShort), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Standards.Cabling("trunk", "growth") is not { } usual) return;
        foreach (var state in judgement.Plant.Value.Trunks.Where(t => t.Ports > 0 && t.Ports <= t.Trunk.Ports))
        {
            var trunk = state.Trunk;
            var share = trunk.Growth ?? Share.FromPercent(usual.Value);
            var wanted = TrunkNeed.Ports(state.Ports, share);
            if (wanted <= trunk.Ports) continue;
            var count = TrunkNeed.Trunks(trunk.PortsEach, state.Ports, share);
            judgement.Add(this, trunk.Span,
                $"'{trunk.Name}' has {Numerals.Grouped(trunk.Ports)} of the {Numerals.Grouped(wanted)} ports wanted with "
                + $"{Numerals.Plain(share.Percent)} % of growth on {Numerals.Grouped(state.Ports)} in use; write "
                + $"'count: {Numerals.Whole(count)}', or the 'growth' they are for",
                trunk.Name, wanted - trunk.Ports, trunk.Growth is null ? Severity.Advice : Kind.Severity,
                new Evidence("ports", wanted, trunk.Ports, "ports", trunk.Growth is null ? usual.Source : null));
        }
    }
}
