using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Pathways;
using Lanewright.Engineering.Plant;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Deliverables;

/// <summary>A row a bundle, in the order of pulling: its route, its cables, what it weighs, and why it comes when it does.</summary>
public static class PullPlanView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("pull-plan",
    [
        new("order", 7, ColumnKind.Whole), new("bundle", 8), new("route", 7, ColumnKind.Whole), new("from-rack", 18), new("to-rack", 18),
        new("pathways", 44), new("part", 24), new("cables", 7, ColumnKind.Whole), new("way-m", 9, ColumnKind.Real),
        new("length-m", 9, ColumnKind.Real),
        new("bundle-mm", 9, ColumnKind.Real), new("weight-kg", 9, ColumnKind.Real), new("weight-known", 14),
        new("persons", 8, ColumnKind.Whole),
        new("fibres", 7, ColumnKind.Whole), new("spare-fibres", 10, ColumnKind.Whole), new("first", 12), new("last", 12),
        new("why-now", 44),
    ], () => designed.Pulls.Value.Bundles.Select(b => Row(designed, b)));

    /// <summary>Whether the plan has neither pathways nor cables from rack to rack.</summary>
    public static bool IsEmpty(DesignedPlan designed) =>
        designed.Pathways.Value.Net is null && designed.Pulls.Value.Bundles.IsEmpty;

    /// <summary>Why a bundle is pulled when it is, in words.</summary>
    public static string Words(PullReason reason) => reason switch
    {
        PullReason.Longest => "its way is the longest, so it lies lowest",
        PullReason.Shorter => "its way is shorter than that before, so it lies above it",
        PullReason.SameRoute => "same route as the one before",
        PullReason.Open => "no pathway leads it: after what lies in pathways, the farthest first",
        _ => "its way is as long as that before",
    };

    /// <summary>What a cable of a bundle is called.</summary>
    public static string Name(DesignedPlan designed, CableKey key)
    {
        if (key.Kind == CableKind.Trunk) return designed.Plan.Trunks[key.Index].NameOf(key.Number + 1);
        if (key.Kind == CableKind.LineCord)
        {
            var cord = designed.Lines.Value.Cords[key.Index];
            return Identifiers.LineCord(cord.Line, cord.Route, cord.Number);
        }
        var cable = Identifiers.Cable(designed.Design.CableOf(key.Index));
        return designed.Design.SolutionOf(key.Index) is { Patching.IsEmpty: false } solution
            ? CordNames.Of(cable, solution, key.Number, designed.Plan.Links.LegOf(key.Index))
            : cable;
    }

    private static Cell[] Row(DesignedPlan designed, PullBundle bundle)
    {
        var racks = designed.Plan.Building.Racks;
        return
        [
            bundle.Order, bundle.Name, bundle.Group, racks[bundle.From].Name, racks[bundle.To].Name, string.Join(" ", bundle.Pathways),
            bundle.Item.Name, bundle.Cables.Length,
            bundle.Distance is { } distance ? distance.Metres : Cell.Empty, Math.Round(bundle.Length.Metres, 2),
            bundle.Item.Diameter.Metres > 0 ? Math.Round(bundle.Diameter.Millimetres, 1) : Cell.Empty,
            bundle.Kilograms > 0 ? Math.Round(bundle.Kilograms, 2) : Cell.Empty,
            bundle.Kilograms > 0 ? Marks.Name(bundle.WeightMark) : "unproven",
            bundle.Persons(designed.Plan.Standards) is { } persons ? persons : Cell.Empty,
            bundle.Fibres > 0 ? bundle.Fibres : Cell.Empty, bundle.Fibres > 0 ? bundle.SpareFibres : Cell.Empty,
            Name(designed, bundle.Cables[0]), Name(designed, bundle.Cables[^1]), Words(bundle.Reason),
        ];
    }
}
