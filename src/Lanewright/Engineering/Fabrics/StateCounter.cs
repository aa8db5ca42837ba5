using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Space;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts a placed fabric: parts, watts and weight.</summary>
internal sealed class StateCounter(FinderContext context, LinkPricer pricer)
{
    /// <summary>Places after the point of watts and kilograms.</summary>
    internal const int Places = 4;

    private readonly LinkTallier tallier = new(pricer, new RackRoute(context.Policy, context.Standards));

    /// <summary>The fabric counted.</summary>
    /// <param name="fabric">The fabric.</param>
    /// <param name="free">What exists already.</param>
    /// <param name="known">Counts of links to hosts that are known already, and that this adds to.</param>
    /// <param name="isPart">Whether only one kind of host is placed, or leaves without what is above them.</param>
    public FabricState Of(PlacedFabric fabric, FreeItems free, Dictionary<EdgeKey, LinkTally> known, bool isPart)
    {
        var links = fabric.Layout.Links;
        var groups = fabric.Layout.Groups;
        var bill = new FabricBill(context.Policy.Spares, free, isPart);
        var watts = groups.Select(g => new double[g.Places.Length]).ToArray();
        var tallies = new LinkTally[links.Length];
        var fault = "";
        for (var i = 0; i < tallies.Length; i++)
        {
            tallies[i] = fabric.Edges[i] is { } edge
                ? known.TryGetValue(edge, out var found) ? found : known[edge] = tallier.Of(fabric, links[i])
                : tallier.Of(fabric, links[i]);
            if (fault.Length == 0) fault = tallies[i].Fault;
            bill.Add(tallies[i]);
            Spread(tallies[i].FromWatts, links[i].From, watts);
            Spread(tallies[i].ToWatts, links[i].To, watts);
        }
        var units = 0;
        var typical = watts.Sum(w => w.Sum());
        var worst = 0.0;
        var byRack = new Dictionary<int, (double Watts, double Kilograms)>();
        for (var g = 0; g < groups.Length; g++)
        {
            var group = groups[g];
            if (group.Role == SwitchRole.Host) continue;
            bill.Add(group.Model, null, group.Places.Length);
            foreach (var card in group.Cards) bill.Add(card, null, group.Places.Length);
            var load = RackLoad.Of(group.Model, group.Cards);
            units += group.Places.Length * group.Model.Units;
            typical += group.Places.Length * (group.Model.Typical.Value + group.Cards.Sum(c => c.Typical.Value));
            for (var i = 0; i < group.Places.Length; i++)
            {
                var rack = group.Places[i].Rack.Index;
                var before = byRack.GetValueOrDefault(rack);
                byRack[rack] = (before.Watts + load.Watts + watts[g][i], before.Kilograms + load.Kilograms);
                if (fabric.HasLeavesApart || group.Role is not (SwitchRole.Leaf or SwitchRole.Box))
                    worst = Math.Max(worst, load.Watts + watts[g][i]);
                if (fault.Length == 0 && group.Model.ModuleBudget is { } budget && watts[g][i] > budget.Value)
                    fault = $"the modules of one {group.Model.Name} draw {Watts.From(watts[g][i])} and it can spare {budget}";
            }
        }
        return new FabricState(fabric, tallies, bill, typical, units, Most(byRack.Values.Select(r => r.Watts)),
            Most(byRack.Values.Select(r => r.Kilograms)), worst, watts, fault);
    }

    /// <summary>The most of some sums, without the last places in which sums in another order differ: what is told has to be kept when it
    /// is asked for.</summary>
    private static double Most(IEnumerable<double> sums) => Math.Round(sums.DefaultIfEmpty(0).Max(), Places);

    private static void Spread(double[] from, FabricEnd end, double[][] watts)
    {
        if (from.Length == 0) return;
        var at = 0;
        foreach (var run in end.Devices)
            for (var i = run.First; i < run.First + run.Count; i++) watts[run.Group][i] += from[at++];
    }
}
