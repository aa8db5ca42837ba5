using Lanewright.Engineering.Space;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Leaves that stand in one rack, without their uplinks.</summary>
/// <param name="Leaves">How many.</param>
/// <param name="Watts">What they draw together, with modules toward their hosts.</param>
internal readonly record struct LeafRack(int Leaves, double Watts)
{
    /// <summary>The racks of leaves that are placed without what is above them, those alike once.</summary>
    public static IEnumerable<LeafRack> Of(FabricState leaves)
    {
        var groups = leaves.Fabric.Layout.Groups;
        var switches =
            from g in Enumerable.Range(0, groups.Length)
            where groups[g].Role == SwitchRole.Leaf
            let own = RackLoad.Of(groups[g].Model, groups[g].Cards).Watts
            from i in Enumerable.Range(0, groups[g].Places.Length)
            select (Rack: groups[g].Places[i].Rack.Index, Watts: own + leaves.ModuleWatts[g][i]);
        return switches.GroupBy(s => s.Rack, s => s.Watts).Select(r => new LeafRack(r.Count(), r.Sum())).Distinct();
    }
}
