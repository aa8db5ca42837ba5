using System.Collections.Immutable;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>A stretch of a quantity over which one option is the cheapest.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Shape">The shape of the option; null where nothing fits.</param>
/// <param name="Name">The option in a few words; empty where nothing fits.</param>
/// <param name="CostFrom">Its price over the years where the stretch begins.</param>
/// <param name="CostTo">Its price over the years where the stretch ends.</param>
public sealed record BreakEvenStretch(decimal From, decimal To, FabricShape? Shape, string Name, Money CostFrom, Money CostTo)
{
    /// <summary>Prices over the years known between its ends, lowest value first: corners of the chain, or where it was asked.</summary>
    public ImmutableArray<(decimal Value, Money Cost)> Between { get; init; } = [];
}
