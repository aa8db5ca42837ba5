using System.Collections.Immutable;

namespace Lanewright.Engineering.Pathways;

/// <summary>Two links that a plan wants on ways without a stretch in common.</summary>
/// <param name="One">One link.</param>
/// <param name="Other">The other.</param>
/// <param name="Rack">The rack both begin at.</param>
/// <param name="Shared">Stretches that both have to lie in, because all ways of at least one of them lead through; none when they are
/// apart.</param>
/// <param name="Crossings">Points away from their racks that both pass.</param>
public sealed record ApartPair(int One, int Other, int Rack, ImmutableArray<int> Shared, ImmutableArray<int> Crossings);
