using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Finds the best design of each shape.</summary>
internal sealed class ShapeSearch(SearchContext context)
{
    private readonly BoxSearch boxes = new(context);

    private WantedFabric Wanted => context.Wanted;

    /// <summary>The best of a shape.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="ceiling">Hundredths from which on nothing is of interest.</param>
    /// <param name="barred">A family that is left out; null for none.</param>
    public ShapeResult Of(FabricShape shape, double ceiling = double.PositiveInfinity, FabricFamily? barred = null)
    {
        if (NotAsked(shape) is { Length: > 0 } reason) return ShapeResult.None(reason);
        var incumbent = new Incumbent(context.Demand, context.Pricer, context.Effort, context.Draw, ceiling, barred);
        return shape switch
        {
            FabricShape.FixedBox => boxes.Run(shape, context.Space.Boxes, 1, 0, incumbent),
            FabricShape.Chassis => boxes.Run(shape, context.Space.Chassis, 1, 0, incumbent),
            FabricShape.CollapsedPair => boxes.Run(shape, context.Space.All, 2, context.PeerLinks, incumbent),
            FabricShape.LeafSpine => LeafSpineSearch.Run(context, shape, 1, incumbent),
            FabricShape.ThreeTier => ThreeTierSearch.Run(context, shape, 1, incumbent),
            FabricShape.Planes => SideBySide(
                shape, Wanted.Planes > 1 ? Wanted.Planes : context.Demand.Hosts[0].Demand.Ports, true, incumbent),
            _ => SideBySide(shape, Math.Max(1, Wanted.Planes), Wanted.MostTiers == 1, incumbent),
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
            if (odd is not null) return odd.Demand.NotSpread($"{Wanted.Rails} rails");
        }
        if (shape == FabricShape.Planes && Wanted.Planes <= 1 && context.Demand.Hosts.Any(h => h.Demand.Ports < 2))
            return "hosts with one port are in one plane";
        var least = shape switch { FabricShape.LeafSpine => 2, FabricShape.ThreeTier => 3, _ => 1 };
        return Wanted.MostTiers < least ? $"it has {least} tiers and {Wanted.MostTiers} are allowed" : "";
    }

    /// <summary>The best of one, two and three tiers.</summary>
    private ShapeResult SideBySide(FabricShape shape, int planes, bool mayBeBoxes, Incumbent incumbent)
    {
        var last = ShapeResult.None("its rails have to meet");
        if (mayBeBoxes) last = boxes.Run(shape, context.Space.All, shape == FabricShape.Rails ? Wanted.Rails : planes, 0, incumbent);
        if (Wanted.MostTiers is null or > 1) last = LeafSpineSearch.Run(context, shape, planes, incumbent);
        if (Wanted.MostTiers is null or > 2) last = ThreeTierSearch.Run(context, shape, planes, incumbent);
        return last;
    }
}
