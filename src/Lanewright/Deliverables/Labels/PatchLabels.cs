using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Labels;

/// <summary>The labels of the cords of a patched link: each end is marked with its own place and the place of the other end.</summary>
internal static class PatchLabels
{
    /// <summary>The labels of one link; cords and roots of fan-outs that links share are marked once.</summary>
    /// <param name="designed">The plan.</param>
    /// <param name="labels">Identifiers.</param>
    /// <param name="link">The link.</param>
    /// <param name="solution">How it is made.</param>
    /// <param name="told">The shared cords that have their labels, by cable and place on the way.</param>
    public static IEnumerable<CableLabel> Of(
        DesignedPlan designed, PlaceLabels labels, int link, Solution solution, HashSet<(int Cable, int Joint)> told)
    {
        var cable = designed.Design.CableOf(link);
        var leg = designed.Plan.Links.LegOf(link);
        for (var joint = 0; joint < solution.Patching.Length; joint++)
        {
            var cord = solution.Patching[joint];
            var isShared = cord.Links > 1;
            var isNew = !isShared || told.Add((cable, joint));
            if (cord.IsWhole && !isNew) continue;
            var name = CordNames.Of(Identifiers.Cable(cable), solution, joint, leg);
            var from = PatchPlaces.From(designed, labels, link, joint);
            var to = PatchPlaces.To(designed, labels, link, joint);
            var (fromEnd, toEnd) = (from.Trunk is null ? "from" : "panel", to.Trunk is null ? "to" : "panel");
            var type = cord.Kind is PatchKind.Array or PatchKind.Duplex
                ? " " + Typed(designed.Plant.Value.WayOf(link)?.Polarity.CordTypes[joint])
                : "";
            var medium = (solution.MediumName + type).TrimEnd();
            var more = $" and {Numerals.Whole(cord.Links - 1)} more";
            // The root of a fan-out is marked once, and each leg by itself.
            if (cord.Kind != PatchKind.Split || isNew)
                yield return new CableLabel(name, fromEnd + Leg(cord.Kind == PatchKind.Merge, leg), from.Label,
                    to.Label + (cord.Kind == PatchKind.Split ? more : ""), medium);
            if (cord.Kind != PatchKind.Merge || isNew)
                yield return new CableLabel(name, toEnd + Leg(cord.Kind == PatchKind.Split, leg), to.Label,
                    from.Label + (cord.Kind == PatchKind.Merge ? more : ""), medium);
        }
    }

    /// <summary>Duplex cords are called by their ends, array cords by a letter that says nothing alone.</summary>
    private static string Typed(string? type) => type is null ? "" : type.Length == 1 ? "type " + type : type;

    private static string Leg(bool isLeg, int leg) => isLeg ? " " + Numerals.Whole(leg) : "";
}
