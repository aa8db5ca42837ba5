using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Load;
using Lanewright.Engineering.Space;
using Lanewright.Model;
using Lanewright.Model.Devices;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Placement;

/// <summary>Where devices and rows should stand so that cables cost least, and what distance costs.</summary>
public sealed class PlacementStudy
{
    private readonly Plan plan;
    private readonly LinkDesign design;
    private readonly RackBook book;
    private readonly LengthPrices prices;
    private readonly PlacementCost cost;

    /// <summary>Studies a design.</summary>
    public PlacementStudy(Plan plan, LinkDesign design, RackBook book)
    {
        (this.plan, this.design, this.book) = (plan, design, book);
        prices = new LengthPrices(plan, design);
        cost = new PlacementCost(plan, design, prices);
    }

    /// <summary>Groups that are asked about where nobody names any: those whose switches are the highest of their network.</summary>
    public ImmutableArray<DeviceGroup> HighestGroups(ImmutableArray<PlanNetwork> networks)
    {
        var found = new SortedSet<int>();
        foreach (var network in networks)
        {
            ImmutableArray<int> switches =
                [.. Enumerable.Range(0, plan.Devices.Count).Where(d => network.HasLinks(d) && network.IsSwitch(d))];
            if (switches.IsEmpty) continue;
            var highest = switches.Max(network.Tier);
            if (highest < 2) continue;
            foreach (var device in switches.Where(d => network.Tier(d) == highest)) found.Add(plan.Devices.Group(device).Index);
        }
        return [.. found.Select(g => plan.Devices.Groups[g])];
    }

    /// <summary>The best places of a group in its hall, or why there are none.</summary>
    /// <param name="group">The group.</param>
    /// <param name="allows">Racks that are offered; all of the hall and of the kind the group stands in where it says yes to all.</param>
    public (GroupPlacement? Placement, PlacelessGroup? Placeless) Of(DeviceGroup group, Func<Rack, bool> allows) =>
        GroupPlacer.Find(plan, book, cost, group.Index, allows);

    /// <summary>The best order of rows alike, hall by hall; of rows without a cable that costs by its length nothing is told.</summary>
    public ImmutableArray<RowOrder> Rows() => [.. RowPlacer.Find(plan, cost).Where(r => !r.IsLookedAt || r.Now > 0)];

    /// <summary>What a link of each kind costs by its length, up to a length; kinds of stated length left out. Kinds of the same sets
    /// that cost the same are told once.</summary>
    public ImmutableArray<(LinkClass Link, ImmutableArray<MediaStep> Steps)> Steps(Length longest) =>
    [
        .. prices.Templates.Select(t => design.Choices[t].Class)
            .Where(c => c is { Statement.Length: null, Through: null, Joins: null })
            .Select(c => (Link: c, Steps: MediaStep.Of(prices, c.Index, longest)))
            .DistinctBy(s => (s.Link.Statement.Name, string.Join('|', s.Steps))),
    ];
}
