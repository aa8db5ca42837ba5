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
    /// <summary>Whether the option is proven to be the cheapest at every value; otherwise it is at those that were asked.</summary>
    public bool IsProven { get; init; } = true;

    /// <summary>The part of it that is proven, where several stretches of one winner are told as one.</summary>
    public Share ProvenShare { get; init; }

    /// <summary>Where options take turns: those that do, beside this one.</summary>
    public ImmutableArray<string> Others { get; init; } = [];

    /// <summary>Where options take turns in steps too narrow to tell one by one: how often the cheapest changes; 0 elsewhere.</summary>
    public int Turns { get; init; }

    /// <summary>Prices over the years known between its ends, lowest value first: corners of the chain, or where it was asked.</summary>
    public ImmutableArray<(decimal Value, Money Cost)> Between { get; init; } = [];
}
