using System.Collections.Immutable;

namespace Lanewright.Engineering.Fabrics;

/// <summary>A tier above the leaves.</summary>
/// <param name="Build">The switch.</param>
/// <param name="Count">How many that a switch below is linked to.</param>
/// <param name="Down">How ports to the tier below are opened, for each kind of host.</param>
/// <param name="Up">How uplinks are opened; not set for the top.</param>
/// <param name="Parallel">Links to each switch of the tier above; 0 for the top.</param>
internal sealed record UpperChoice(SwitchBuild Build, int Count, ImmutableArray<PortUse> Down, PortUse Up = default, int Parallel = 0);
