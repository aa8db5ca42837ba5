using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>A design with what it costs.</summary>
/// <param name="Design">The design.</param>
/// <param name="Start">The fabric at the start.</param>
/// <param name="End">The fabric after the last year.</param>
/// <param name="Cost">What the start costs.</param>
/// <param name="CostOverYears">What the years cost.</param>
/// <param name="Years">The years.</param>
/// <param name="Energy">Energy of all years.</param>
internal sealed record PricedDesign(
    FabricDesign Design, FabricState Start, FabricState End, FabricCost Cost, FabricCost CostOverYears, ImmutableArray<FabricYear> Years,
    Energy Energy)
{
    /// <summary>What is compared.</summary>
    public Money Total => CostOverYears.Total;

    /// <summary>The most switches of upper tiers that stand in one rack.</summary>
    public int MostUppersInRack => End.Fabric.Layout.Groups
        .Where(g => g.Role is not (SwitchRole.Host or SwitchRole.Leaf or SwitchRole.Box))
        .SelectMany(g => g.Places)
        .CountBy(p => p.Rack.Index)
        .Select(r => r.Value)
        .DefaultIfEmpty(0)
        .Max();
}
