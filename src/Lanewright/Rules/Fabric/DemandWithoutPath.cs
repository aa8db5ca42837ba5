using Lanewright.Quantities;

namespace Lanewright.Rules.Fabric;

/// <summary>Traffic between hosts that nothing joins.</summary>
internal sealed class DemandWithoutPath() : Rule("LW3107", nameof(DemandWithoutPath))
{
    /// <inheritdoc/>
    public override bool NeedsWholePlan => true;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var study in judgement.Load.Demands)
        {
            var demand = study.Demand;
            var network = study.Fabric.Map.Network;
            var apart = demand.Senders.Union(demand.Receivers).Where(d => network.UpLinks(d).Length == 0).ToList();
            var name = demand.Network.Length > 0 ? $"the network '{demand.Network}'" : "the plan's main network";
            if (apart.Count > 0)
                judgement.Add(this, demand.Span,
                    $"'{demand.Name}': {FabricWords.WithMore(judgement.Plan.Devices.Name(apart[0]), apart.Count)} have no link to a switch "
                    + $"of {name}; link them, or take them out of the demand",
                    demand.Name, apart.Count);
            else if (study.UnroutedGigabits > 0)
                judgement.Add(this, demand.Span,
                    $"'{demand.Name}': {Numerals.Shown(study.UnroutedGigabits, "Gb/s")} are sent between hosts that no way through {name} "
                    + "joins; link their switches, or name the network that joins them",
                    demand.Name);
        }
    }
}
