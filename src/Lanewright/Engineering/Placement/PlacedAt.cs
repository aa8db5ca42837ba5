using Lanewright.Model.Places;

namespace Lanewright.Engineering.Placement;

/// <summary>Where a device stands or could stand.</summary>
/// <param name="Rack">The rack.</param>
/// <param name="Unit">Its lowest rack unit, from 1.</param>
public readonly record struct PlacedAt(Rack Rack, int Unit)
{
    /// <summary>Of a place that is offered, what is not known of whether its rack bears a device more.</summary>
    public BearingGaps Gaps { get; init; }
}
