using System.Collections.Immutable;
using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Pathways;
using Lanewright.Engineering.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>A row a cord of a patched cable, a leg of a fan-out counting as one: where both ends are plugged in, of which type it is, and
/// which fibres of the trunk lie behind each panel.</summary>
public static class PatchesView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("patches",
    [
        new("cord", 12), new("cable", 10), new("link", 10), new("leg", 5, ColumnKind.Whole), new("part", 20), new("type", 9),
        new("length-m", 9, ColumnKind.Real), new("from-device", 20), new("from-port", 9), new("from-trunk", 16), new("from-fibres", 24),
        new("to-device", 20), new("to-port", 9), new("to-trunk", 16), new("to-fibres", 24), new("polarity", 12), new("verdict", 9),
        new("existing", 8), new("pathways", 40), new("moved-off", 20),
    ], () => Rows(designed));

    private static IEnumerable<Cell[]> Rows(DesignedPlan designed)
    {
        var (plan, design, plant) = (designed.Plan, designed.Design, designed.Plant.Value);
        var labels = new PlaceLabels(plan);
        var told = new HashSet<(int Cable, int Joint)>();
        for (var link = 0; link < plan.Links.Count; link++)
        {
            var patches = plant.PatchesOf(link);
            if (patches.IsEmpty || design.SolutionOf(link) is not { } solution) continue;
            var fibres = plant.FibresOf(link);
            for (var joint = 0; joint <= patches.Length; joint++)
            {
                // What all links of a cable run in side by side is one cord.
                if (solution.Patching[joint].IsWhole && !told.Add((design.CableOf(link), joint))) continue;
                yield return Row(designed, labels, solution, link, joint, fibres);
            }
        }
    }

    private static Cell[] Row(
        DesignedPlan designed, PlaceLabels labels, Solution solution, int link, int joint, ImmutableArray<FibreLine> fibres)
    {
        var (plan, cable) = (designed.Plan, Identifiers.Cable(designed.Design.CableOf(link)));
        var cord = solution.Patching[joint];
        var polarity = designed.Plant.Value.WayOf(link)?.Polarity;
        var leg = plan.Links.LegOf(link);
        var laid = new CableKey(CableKind.Cable, link, joint);
        var (from, to) = (PatchPlaces.From(designed, labels, link, joint), PatchPlaces.To(designed, labels, link, joint));
        return
        [
            CordNames.Of(cable, solution, joint, leg), cable, Identifiers.Link(link),
            solution.LinksPerCable > 1 && !cord.IsWhole ? leg : Cell.Empty, cord.Cord.Name, polarity?.CordTypes[joint], cord.Length.Metres,
            plan.Devices.Name(from.Device), from.Port, Trunk(from.Trunk), Fibres(fibres, joint - 1, cord, from.Trunk),
            plan.Devices.Name(to.Device), to.Port, Trunk(to.Trunk), Fibres(fibres, joint, cord, to.Trunk),
            Json.PolarityJson.Polarity(polarity), Checks.Word(designed.Plant.Value.IsPortless(link) ? Verdict.Fail : solution.Verdict),
            plan.Statements[plan.Links.Statement(link)].IsExisting ? "yes" : "",
            string.Join(" ", designed.Pathways.Value.Through(laid)), designed.Pathways.Value.MovedOff(laid),
        ];
    }

    private static string Trunk(TrunkPatch? patch) =>
        patch is null ? "" : patch.IsThere ? patch.Trunk.NameOf(patch.Number) : "none left";

    /// <summary>The fibres of a trunk by number and colour, as TIA-598 has them; empty at a device and where they are not known.</summary>
    private static string Fibres(ImmutableArray<FibreLine> lines, int hop, PatchCord cord, TrunkPatch? trunk)
    {
        if (trunk is null || hop < 0 || lines.IsEmpty || hop >= lines[0].Hops.Length) return "";
        if (cord.IsWhole) return "all lanes";
        var fibres = lines.Where(l => l.Hops.Length > hop && l.Hops[hop].Fibre > 0).Select(l => l.Hops[hop].Fibre).Order();
        return string.Join(", ", fibres.Select(f => $"{Numerals.Whole(f)} {Drawings.FibreColour.Words(f, trunk.Trunk.Fibres)}"));
    }
}
