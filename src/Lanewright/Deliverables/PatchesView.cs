using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>A row a patched cable: its two cords, and the ports of the panels between them.</summary>
public static class PatchesView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("patches",
    [
        new("cable", 10), new("link", 10), new("trunk", 16), new("number", 8, ColumnKind.Whole), new("from-device", 22),
        new("from-port", 9), new("from-cord", 20), new("from-cord-m", 10, ColumnKind.Real), new("near-panel", 16),
        new("near-slot", 9, ColumnKind.Whole), new("near-port", 9), new("far-panel", 16), new("far-slot", 9, ColumnKind.Whole),
        new("far-port", 9), new("to-cord", 20), new("to-cord-m", 10, ColumnKind.Real), new("to-device", 22),
        new("to-port", 9), new("tube-colour", 11), new("fibre-colours", 18),
    ], () => Rows(designed));

    private static IEnumerable<Cell[]> Rows(DesignedPlan designed)
    {
        var labels = new PlaceLabels(designed.Plan);
        for (var cable = 0; cable < designed.Design.Cables.Length; cable++)
            if (designed.Plant.Value.PatchOf(cable) is { } patch) yield return Row(designed, labels, cable, patch);
    }

    private static Cell[] Row(DesignedPlan designed, PlaceLabels labels, int cable, TrunkPatch patch)
    {
        var (plan, link) = (designed.Plan, designed.Design.Cables[cable].FirstLink);
        var solution = designed.Design.SolutionOf(link);
        var (from, to) = (plan.Links.FromDevice(link), plan.Links.ToDevice(link));
        return
        [
            Identifiers.Cable(cable), Identifiers.Link(link), patch.Trunk.Name, patch.IsThere ? patch.Number : Cell.Empty,
            plan.Devices.Name(from), labels.Port(from, plan.Links.FromPort(link)), solution?.Cable.Name, solution?.Length.Metres ?? 0,
            plan.Devices.Name(patch.NearPanel), patch.NearSlot, Port(patch, patch.NearPort),
            plan.Devices.Name(patch.FarPanel), patch.FarSlot, Port(patch, patch.FarPort), solution?.FarCord?.Name,
            solution?.FarLength?.Metres ?? 0, plan.Devices.Name(to), labels.Port(to, plan.Links.ToPort(link)), .. Colours(patch),
        ];
    }

    private static string Port(TrunkPatch patch, int port) =>
        patch.Trunk.Cassette is null ? "array" : port == 0 ? "by label" : Numerals.Whole(port);

    /// <summary>TIA-598: the trunk's number as a tube, and its fibres at the near panel where pairs lie side by side.</summary>
    private static Cell[] Colours(TrunkPatch patch)
    {
        var tube = Drawings.FibreColour.Of(patch.Number).Label;
        if (patch.Trunk.Cassette is null) return [tube, "all"];
        if (patch.NearPort == 0 || !patch.Trunk.IsOrderKnown) return [tube, ""];
        var first = (2 * patch.NearPort) - 1;
        return [tube, $"{Drawings.FibreColour.Of(first).Label}, {Drawings.FibreColour.Of(first + 1).Label}"];
    }
}
