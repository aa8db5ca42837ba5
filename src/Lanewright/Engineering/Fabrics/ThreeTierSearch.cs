using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Searches pods of leaves and aggregation switches under cores.</summary>
internal sealed class ThreeTierSearch
{
    /// <summary>The best of a shape.</summary>
    public static ShapeResult Run(SearchContext context, FabricShape shape, int planes)
    {
        _ = (context, shape, planes);
        return ShapeResult.None("not yet");
    }
}
