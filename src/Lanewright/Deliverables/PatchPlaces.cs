using Lanewright.Engineering.Plant;
using Lanewright.Model.Links;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>Where the ends of the cords of a patched link are plugged in.</summary>
internal static class PatchPlaces
{
    /// <summary>The end of a cord that is nearer to the first end of the link.</summary>
    /// <param name="designed">The plan.</param>
    /// <param name="labels">Identifiers.</param>
    /// <param name="link">The link.</param>
    /// <param name="joint">Which of its cords, from 0.</param>
    public static PatchPlace From(DesignedPlan designed, PlaceLabels labels, int link, int joint)
    {
        var links = designed.Plan.Links;
        if (joint == 0) return Device(labels, links.FromDevice(link), links.FromPort(link));
        var patch = designed.Plant.Value.PatchesOf(link)[joint - 1];
        return Panel(labels, patch, patch.FarPanel, patch.FarSlot, patch.IsFarOpen, patch.FarPort);
    }

    /// <summary>The other end.</summary>
    public static PatchPlace To(DesignedPlan designed, PlaceLabels labels, int link, int joint)
    {
        var links = designed.Plan.Links;
        var patches = designed.Plant.Value.PatchesOf(link);
        if (joint == patches.Length) return Device(labels, links.ToDevice(link), links.ToPort(link));
        var patch = patches[joint];
        return Panel(labels, patch, patch.NearPanel, patch.NearSlot, patch.IsNearOpen, patch.NearPort);
    }

    private static PatchPlace Device(PlaceLabels labels, int device, PortPlace port) =>
        new(device, labels.Port(device, port), labels.Place(device, port), null);

    private static PatchPlace Panel(PlaceLabels labels, TrunkPatch patch, int panel, int slot, bool isOpen, int port)
    {
        var told = Numerals.Padded(slot, 2) + (isOpen ? "" : port == 0 ? "/by label" : "/" + Numerals.Whole(port));
        return new PatchPlace(panel, told, labels.PanelPort(panel, slot, isOpen ? 0 : port), patch);
    }
}
