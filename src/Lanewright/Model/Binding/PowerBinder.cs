using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Places;
using Lanewright.Model.Power;
using Lanewright.Quantities;

namespace Lanewright.Model.Binding;

/// <summary>Turns the section <c>power</c> into feeds.</summary>
internal sealed class PowerBinder(PlanTree tree, Building building, Func<string[], bool> isPlaceInDoubt, FindingSink findings)
{
    /// <summary>The feeds in natural order of their names.</summary>
    public ImmutableArray<PowerFeed> Bind()
    {
        var feeds = ImmutableArray.CreateBuilder<PowerFeed>();
        foreach (var (name, map, _) in tree.Named("power", "the power feed"))
        {
            if (map.InUnits("volts", UnitText.Voltages) is not { } volts) continue;
            if (map.InUnits("breaker", UnitText.Currents) is not { } breaker) continue;
            var racks = new GroupPlacement(building, isPlaceInDoubt, findings).Racks(map);
            feeds.Add(new PowerFeed(name, [.. racks.Distinct().Order()], volts, map.Whole("phases") ?? 1,
                map.Text("outlets") == PowerLanguage.PhaseToPhase, Amperes.From(breaker), map.Switch("full-rated") ?? false, map.Span));
        }
        return feeds.ToImmutable();
    }
}
