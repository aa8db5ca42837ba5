using System.Collections.Immutable;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>One place in the plug of an end, from top to bottom.</summary>
/// <param name="Place">Its number as the plug counts; empty when the plug does not count or it is not known.</param>
/// <param name="Lanes">The lanes that pass it; none for a dark place.</param>
internal sealed record PlugRow(string Place, ImmutableArray<MediaLane> Lanes)
{
    /// <summary>Whether nothing passes it.</summary>
    public bool IsDark => Lanes.IsEmpty;

    /// <summary>Whether it begins a group and is set off from the row above.</summary>
    public bool IsSetOff { get; init; }
}
