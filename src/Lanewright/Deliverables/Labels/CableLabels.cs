using Lanewright.Engineering.Plant;
using Lanewright.Model;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Labels;

/// <summary>The labels of all cables that are laid, both ends, in the order of the links: the root of a fan-out has one label, each leg one
/// of its own.</summary>
public static class CableLabels
{
    /// <summary>The labels. Cables that lie there already keep theirs.</summary>
    public static IEnumerable<CableLabel> All(DesignedPlan designed)
    {
        var (plan, design) = (designed.Plan, designed.Design);
        var labels = new PlaceLabels(plan);
        var legs = new Dictionary<int, int>();
        for (var link = 0; link < plan.Links.Count; link++)
        {
            var cable = design.CableOf(link);
            if (cable < 0 || plan.Statements[plan.Links.Statement(link)].IsExisting) continue;
            if (design.SolutionOf(link) is not { } solution) continue;
            if (designed.Plant.Value.PatchOf(cable) is { } patch)
            {
                if (!legs.TryAdd(cable, 1)) continue;
                foreach (var label in Patched(plan, labels, link, cable, patch, solution.MediumName)) yield return label;
                continue;
            }
            var all = design.Cables[cable].Links;
            var leg = legs[cable] = legs.GetValueOrDefault(cable) + 1;
            var (from, to) = Ends(plan, labels, link);
            // A fan-out has its root at the end whose cage is split.
            var isTurned = all > 1 && plan.Links.ToPort(link).Ways > 1 && plan.Links.FromPort(link).Ways == 1;
            var (root, tip) = isTurned ? (to, from) : (from, to);
            var name = Identifiers.Cable(cable);
            var more = all > 1 ? $" and {Numerals.Whole(all - 1)} more" : "";
            if (leg == 1) yield return new CableLabel(name, isTurned ? "to" : "from", root, tip + more, solution.MediumName);
            var end = (isTurned ? "from" : "to") + (all > 1 ? " " + Numerals.Whole(leg) : "");
            yield return new CableLabel(name, end, tip, root, solution.MediumName);
        }
    }

    /// <summary>The two cords of a patched cable: each is marked with its port and the panel's.</summary>
    private static IEnumerable<CableLabel> Patched(
        Plan plan, PlaceLabels labels, int link, int cable, TrunkPatch patch, string medium)
    {
        var (from, to) = Ends(plan, labels, link);
        var name = Identifiers.Cable(cable);
        var near = labels.PanelPort(patch.NearPanel, patch.NearSlot, patch.Trunk.Cassette is null ? 0 : patch.NearPort);
        var far = labels.PanelPort(patch.FarPanel, patch.FarSlot, patch.Trunk.Cassette is null ? 0 : patch.FarPort);
        yield return new CableLabel(name + "a", "from", from, near, medium);
        yield return new CableLabel(name + "a", "panel", near, from, medium);
        yield return new CableLabel(name + "b", "panel", far, to, medium);
        yield return new CableLabel(name + "b", "to", to, far, medium);
    }

    private static (string From, string To) Ends(Plan plan, PlaceLabels labels, int link) => (
        labels.Place(plan.Links.FromDevice(link), plan.Links.FromPort(link)),
        labels.Place(plan.Links.ToDevice(link), plan.Links.ToPort(link)));
}
