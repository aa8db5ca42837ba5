using Lanewright.Model.Links;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>Finds links by what people call them.</summary>
public static class NamedLinks
{
    /// <summary>The first link that a cable, a link, a port, a label, a trunk or a port of a panel belongs to; null where there is
    /// none.</summary>
    /// <param name="designed">The plan.</param>
    /// <param name="name">Such as <c>C000001</c>, <c>leaf-1:3</c>, <c>HALL.A02-46:04</c>, <c>up-1</c> or <c>odf-a:04</c>.</param>
    public static int? Find(DesignedPlan designed, string name)
    {
        var (plan, design) = (designed.Plan, designed.Design);
        var labels = new PlaceLabels(plan);
        for (var link = 0; link < plan.Links.Count; link++)
        {
            var cable = design.CableOf(link);
            if ((cable >= 0 && Identifiers.Cable(cable) == name) || Identifiers.Link(link) == name) return link;
            foreach (var (device, port) in Ends(designed, link))
                if (Port(designed, labels, device, port) == name || labels.Place(device, port) == name) return link;
        }
        return InPlant(designed, labels, name);
    }

    /// <summary>A port in use of a split cage of that name; null where no such cage is split.</summary>
    public static string? PortOfCage(DesignedPlan designed, string name)
    {
        var labels = new PlaceLabels(designed.Plan);
        return Enumerable.Range(0, designed.Plan.Links.Count)
            .SelectMany(l => Ends(designed, l))
            .Select(e => Port(designed, labels, e.Device, e.Port))
            .FirstOrDefault(p => p.StartsWith(name + "/", StringComparison.Ordinal));
    }

    private static int? InPlant(DesignedPlan designed, PlaceLabels labels, string name)
    {
        var (plan, plant) = (designed.Plan, designed.Plant.Value);
        for (var link = 0; link < plan.Links.Count && !plan.Trunks.IsEmpty; link++)
        {
            var patches = plant.PatchesOf(link);
            for (var i = 0; i < patches.Length; i++)
            {
                if (patches[i].Trunk.NameOf(patches[i].Number) == name || IsPlace(PatchPlaces.To(designed, labels, link, i))
                    || IsPlace(PatchPlaces.From(designed, labels, link, i + 1))) return link;
            }
        }
        return null;

        bool IsPlace(PatchPlace place) => plan.Devices.Name(place.Device) + ":" + place.Port == name || place.Label == name;
    }

    private static IEnumerable<(int Device, PortPlace Port)> Ends(DesignedPlan designed, int link)
    {
        var links = designed.Plan.Links;
        yield return (links.FromDevice(link), links.FromPort(link));
        yield return (links.ToDevice(link), links.ToPort(link));
    }

    private static string Port(DesignedPlan designed, PlaceLabels labels, int device, PortPlace port) =>
        designed.Plan.Devices.Name(device) + ":" + labels.Port(device, port);
}
