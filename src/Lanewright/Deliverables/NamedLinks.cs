using Lanewright.Engineering.Plant;
using Lanewright.Model.Links;
using Lanewright.Model.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>Finds links by what people call them.</summary>
public static class NamedLinks
{
    /// <summary>The first link that a cable, a cord, a link, a port, a label, a trunk or a port of a panel belongs to; null where there
    /// is none.</summary>
    /// <param name="designed">The plan.</param>
    /// <param name="name">Such as <c>C000001</c>, <c>C000021a</c>, <c>leaf-1:3</c>, <c>HALL.A02-46:04</c>, both ends of a label with
    /// <c> / </c> between them, <c>up-1</c> or <c>odf-a:04</c>.</param>
    public static NamedLink? Find(DesignedPlan designed, string name)
    {
        var (plan, design) = (designed.Plan, designed.Design);
        var labels = new PlaceLabels(plan);
        for (var link = 0; link < plan.Links.Count; link++)
        {
            var cable = design.CableOf(link);
            if (cable >= 0 && Identifiers.Cable(cable) == name) return new NamedLink(link, IsWholeCable: true);
            if (Identifiers.Link(link) == name) return new NamedLink(link, IsWholeCable: false);
            foreach (var (device, port) in Ends(designed, link))
                if (Port(designed, labels, device, port) == name || labels.Place(device, port) == name)
                    return new NamedLink(link, IsWholeCable: false);
            var (here, there) = (PlaceOf(designed, labels, link, isFar: false), PlaceOf(designed, labels, link, isFar: true));
            if (IsLabel(name, here, there)) return new NamedLink(link, IsWholeCable: false);
        }
        return InPlant(designed, labels, name);
    }

    /// <summary>A trunk that nothing is patched through, by its number or by its place in a panel; null where there is none.</summary>
    public static IdleTrunk? FindIdle(DesignedPlan designed, string name)
    {
        var (plan, plant) = (designed.Plan, designed.Plant.Value);
        var labels = new PlaceLabels(plan);
        foreach (var trunk in plan.Trunks)
        {
            for (var number = 1; number <= trunk.Count; number++)
                if (IsTrunk(designed, labels, trunk, number, name)) return IdleTrunk.Of(plan, plant, trunk, number);
        }
        return null;
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

    /// <summary>A cord by its name or label, a trunk by its number or label, a port of a panel.</summary>
    private static NamedLink? InPlant(DesignedPlan designed, PlaceLabels labels, string name)
    {
        var (plan, plant) = (designed.Plan, designed.Plant.Value);
        for (var link = 0; link < plan.Links.Count && !plan.Trunks.IsEmpty; link++)
        {
            var patches = plant.PatchesOf(link);
            if (patches.IsEmpty || designed.Design.SolutionOf(link) is not { } solution) continue;
            for (var i = 0; i < patches.Length; i++)
                if (patches[i].IsThere && IsTrunk(designed, labels, patches[i].Trunk, patches[i].Number, name))
                    return new NamedLink(link, IsWholeCable: false);
            var cable = Identifiers.Cable(designed.Design.CableOf(link));
            for (var joint = 0; joint <= patches.Length; joint++)
            {
                var (from, to) = (PatchPlaces.From(designed, labels, link, joint), PatchPlaces.To(designed, labels, link, joint));
                if (CordNames.Of(cable, solution, joint, plan.Links.LegOf(link)) == name)
                    return new NamedLink(link, solution.Patching[joint].Links > 1);
                if (IsPlace(from) || IsPlace(to) || IsLabel(name, from.Label, to.Label)) return new NamedLink(link, IsWholeCable: false);
            }
        }
        return null;

        bool IsPlace(PatchPlace place) => plan.Devices.Name(place.Device) + ":" + place.Port == name || place.Label == name;
    }

    private static bool IsTrunk(DesignedPlan designed, PlaceLabels labels, TrunkGroup trunk, int number, string name)
    {
        if (trunk.NameOf(number) == name) return true;
        var (near, far) = (Place(isFar: false), Place(isFar: true));
        return near.Label == name || far.Label == name || near.Port == name || far.Port == name || IsLabel(name, near.Label, far.Label);

        (string Label, string Port) Place(bool isFar)
        {
            var (panel, slot) = (isFar ? trunk.To : trunk.From, designed.Plant.Value.SlotOf(trunk, isFar) + number - 1);
            return (labels.PanelPort(panel, slot, 0), $"{designed.Plan.Devices.Name(panel)}:{Numerals.Padded(slot, 2)}");
        }
    }

    /// <summary>Both ends as a label has them, from either side.</summary>
    private static bool IsLabel(string name, string here, string there) =>
        PlaceLabels.CableEnd(here, there) == name || PlaceLabels.CableEnd(there, here) == name;

    private static string PlaceOf(DesignedPlan designed, PlaceLabels labels, int link, bool isFar)
    {
        var links = designed.Plan.Links;
        return isFar ? labels.Place(links.ToDevice(link), links.ToPort(link)) : labels.Place(links.FromDevice(link), links.FromPort(link));
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
