using System.Collections.Immutable;

namespace Lanewright.Engineering.Placement;

/// <summary>Where the devices of a group should stand so that their cables cost least.</summary>
/// <param name="Group">Index of the group.</param>
/// <param name="Now">What their links cost as the plan has them.</param>
/// <param name="Best">What they cost in the placement found.</param>
/// <param name="NoLessThan">What no placement goes below; equal to <paramref name="Best"/> where that is proven.</param>
/// <param name="Moves">Every device with its place.</param>
/// <param name="Offers">The racks that have room for the first device and bear it, the cheapest first.</param>
public sealed record GroupPlacement(
    int Group, double Now, double Best, double NoLessThan, ImmutableArray<DeviceMove> Moves,
    ImmutableArray<RackOffer> Offers)
{
    /// <summary>Part of both costs that is for ways longer than the shortest; it is taken to stay, so with it nothing is proven.</summary>
    public double Detours { get; init; }

    /// <summary>Whether no placement is cheaper.</summary>
    public bool IsExact => Best - NoLessThan <= Rounding;

    private const double Rounding = 0.005;
}
