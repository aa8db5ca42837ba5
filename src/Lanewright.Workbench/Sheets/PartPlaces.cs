using Lanewright.Model.Places;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>Where a part of the list goes: the devices that are it or hold it, and the links that are made with it.</summary>
/// <param name="Devices">Devices of this model, or with this card.</param>
/// <param name="Links">Links made with it, in order.</param>
/// <param name="Racks">The racks of both.</param>
internal sealed record PartPlaces(IReadOnlyList<int> Devices, IReadOnlyList<int> Links, IReadOnlySet<Rack> Racks)
{
    /// <summary>The places of a part by the name of its model.</summary>
    public static PartPlaces Of(DesignedPlan designed, string name)
    {
        var (plan, design) = (designed.Plan, designed.Design);
        var devices = Enumerable.Range(0, plan.Devices.Count)
            .Where(d => plan.Devices.Group(d).Model.Name == name || plan.Devices.Group(d).Cards.Any(c => c.Name == name))
            .ToList();
        var made = new HashSet<(int, int)>();
        foreach (var choice in design.Choices)
            for (var share = 0; share < choice.Shares.Length; share++)
                if (choice.Shares[share].Solution.Parts.Any(p => p.Item.Name == name)) made.Add((choice.Class.Index, share));
        var links = made.Count == 0
            ? []
            : Enumerable.Range(0, plan.Links.Count).Where(l => made.Contains((design.ClassOf(l), design.ShareOf(l)))).ToList();
        var racks = devices.Concat(links.SelectMany(l => new[] { plan.Links.FromDevice(l), plan.Links.ToDevice(l) }))
            .Select(plan.Devices.Rack).OfType<Rack>().ToHashSet();
        return new PartPlaces(devices, links, racks);
    }
}
