using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Finds what would change the answer.</summary>
public static class BreakEvens
{
    /// <summary>One answer a quantity.</summary>
    public static ImmutableArray<BreakEven> Of(WantedFabric wanted, FinderContext context, SizingAnswer answer) => [];
}
