using System.Collections.Immutable;

namespace Lanewright.Engineering.Pathways;

/// <summary>What a graph of pathways is made of.</summary>
/// <param name="Points">Points, racks last.</param>
/// <param name="Stretches">Stretches of pathways.</param>
/// <param name="Edges">What joins points.</param>
/// <param name="RackPoints">The point of each rack.</param>
/// <param name="FirstRack">The first point that is a rack.</param>
/// <param name="Exits">Points that are exits: the first ones.</param>
/// <param name="ExitPoints">The point of each exit by its hall and name.</param>
/// <param name="Sides">Numbers of the sides by name, from 1.</param>
internal sealed record WayNetParts(
    List<WayPoint> Points, List<WaySegment> Stretches, List<WayEdge> Edges, int[] RackPoints, int FirstRack, int Exits,
    IReadOnlyDictionary<(int Hall, string Exit), int> ExitPoints,
    ImmutableDictionary<string, int> Sides);
