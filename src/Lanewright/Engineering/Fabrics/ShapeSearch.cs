using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Finds the best design of each shape.</summary>
internal sealed class ShapeSearch(SearchContext context)
{
    private readonly BoxSearch boxes = new(context);

    private WantedFabric Wanted => context.Wanted;

    /// <summary>The best of a shape.</summary>
    public ShapeResult Of(FabricShape shape)
    {
        if (NotAsked(shape) is { Length: > 0 } reason) return ShapeResult.None(reason);
        return shape switch
        {
            FabricShape.FixedBox => boxes.Run(shape, context.Space.Boxes, 1),
            FabricShape.Chassis => boxes.Run(shape, context.Space.Chassis, 1),
            FabricShape.CollapsedPair => boxes.Run(shape, context.Space.All, 2, context.PeerLinks),
            FabricShape.LeafSpine => LeafSpineSearch.Run(context, shape, 1),
            FabricShape.ThreeTier => ThreeTierSearch.Run(context, shape, 1),
            FabricShape.Planes => SideBySide(shape, Wanted.Planes > 1 ? Wanted.Planes : context.Demand.Hosts[0].Demand.Ports, true),
            _ => SideBySide(shape, Math.Max(1, Wanted.Planes), Wanted.MostTiers == 1),
        };
    }

    /// <summary>What the wishes have against a shape before anything is counted; empty when nothing.</summary>
    private string NotAsked(FabricShape shape)
    {
        if (!Wanted.Shapes.IsEmpty && !Wanted.Shapes.Contains(shape)) return "it is not among the shapes allowed";
        if (Wanted.Rails > 1 && shape != FabricShape.Rails) return "rails are asked for";
        if (Wanted.Planes > 1 && shape is not (FabricShape.Planes or FabricShape.Rails)) return "planes are asked for";
        if (shape == FabricShape.Rails)
        {
            if (Wanted.Rails <= 1) return "no rails are asked for";
            var odd = context.Demand.Hosts.FirstOrDefault(h => h.Demand.Ports % Wanted.Rails != 0);
            if (odd is not null) return $"the {odd.Demand.Ports} ports of {odd.Demand.Name} do not spread over {Wanted.Rails} rails";
        }
        if (shape == FabricShape.Planes && Wanted.Planes <= 1 && context.Demand.Hosts.Any(h => h.Demand.Ports < 2))
            return "hosts with one port are in one plane";
        var least = shape switch { FabricShape.LeafSpine => 2, FabricShape.ThreeTier => 3, _ => 1 };
        return Wanted.MostTiers < least ? $"it has {least} tiers and {Wanted.MostTiers} are allowed" : "";
    }

    /// <summary>The best of one, two and three tiers.</summary>
    private ShapeResult SideBySide(FabricShape shape, int planes, bool mayBeBoxes)
    {
        var count = shape == FabricShape.Rails ? Wanted.Rails : planes;
        ShapeResult[] results =
        [
            mayBeBoxes ? boxes.Run(shape, context.Space.All, count) : ShapeResult.None("its rails have to meet"),
            Wanted.MostTiers < 2 ? ShapeResult.None("one tier is too small") : LeafSpineSearch.Run(context, shape, planes),
            Wanted.MostTiers < 3 ? ShapeResult.None("two tiers are too small") : ThreeTierSearch.Run(context, shape, planes),
        ];
        var found = results.Where(r => r.Best is not null).OrderBy(r => r.Best?.Total).FirstOrDefault();
        var bounds = results.Where(r => !double.IsNaN(r.Bound)).Select(r => r.Bound).DefaultIfEmpty(double.NaN).Min();
        return found is null ? results.Last(r => r.Reason.Length > 0) : found with { Bound = bounds };
    }
}
