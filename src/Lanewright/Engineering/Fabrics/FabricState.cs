using Lanewright.Engineering.Space;

namespace Lanewright.Engineering.Fabrics;

/// <summary>A fabric in one year, counted.</summary>
/// <param name="Fabric">Where everything stands.</param>
/// <param name="Tallies">How the links of each set are made.</param>
/// <param name="Bill">What it takes.</param>
/// <param name="TypicalWatts">Watts of switches and modules under a usual load.</param>
/// <param name="RackUnits">Rack units of switches.</param>
/// <param name="RackWatts">Most watts of switches with their modules in one rack.</param>
/// <param name="RackKilograms">Most weight of switches in one rack.</param>
/// <param name="WorstSwitchWatts">Most watts with its modules of one switch that shares a rack with switches only.</param>
/// <param name="ModuleWatts">Watts of modules and cable ends in each device, group by group.</param>
/// <param name="Fault">What makes it impossible, whatever is wished; empty otherwise.</param>
internal sealed record FabricState(
    PlacedFabric Fabric, LinkTally[] Tallies, FabricBill Bill, double TypicalWatts, int RackUnits, double RackWatts, double RackKilograms,
    double WorstSwitchWatts, double[][] ModuleWatts, string Fault)
{
    /// <summary>Most watts of switches and of all modules.</summary>
    public double MostWatts => ModuleWatts.Sum(w => w.Sum()) + Fabric.Layout.Groups.Where(g => g.Role != SwitchRole.Host)
        .Sum(g => g.Places.Length * RackLoad.Of(g.Model, g.Cards).Watts);
}
