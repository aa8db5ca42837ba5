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
        var told = new HashSet<(int Cable, int Joint)>();
        for (var link = 0; link < plan.Links.Count; link++)
        {
            var cable = design.CableOf(link);
            if (cable < 0 || plan.Statements[plan.Links.Statement(link)].IsExisting) continue;
            if (design.SolutionOf(link) is not { } solution) continue;
            if (!designed.Plant.Value.PatchesOf(link).IsEmpty)
            {
                foreach (var label in PatchLabels.Of(designed, labels, link, solution, told)) yield return label;
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

    private static (string From, string To) Ends(Plan plan, PlaceLabels labels, int link) => (
        labels.Place(plan.Links.FromDevice(link), plan.Links.FromPort(link)),
        labels.Place(plan.Links.ToDevice(link), plan.Links.ToPort(link)));
}
