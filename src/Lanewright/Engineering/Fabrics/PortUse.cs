using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Fabrics;

/// <summary>One way to open ports on a switch: a kind of cage, and how each is split.</summary>
/// <param name="Cage">The kind of cage.</param>
/// <param name="Mode">Ports it is split into.</param>
internal readonly record struct PortUse(CageModel Cage, PortMode Mode);
