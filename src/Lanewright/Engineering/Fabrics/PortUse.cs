using System.Runtime.CompilerServices;
using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Fabrics;

/// <summary>One way to open ports on a switch: a kind of cage, and how each is split.</summary>
/// <param name="Cage">The kind of cage.</param>
/// <param name="Mode">Ports it is split into.</param>
internal readonly record struct PortUse(CageModel Cage, PortMode Mode)
{
    /// <summary>Cages that so many ports take.</summary>
    public long CagesFor(long ports) => (ports + Mode.Ways - 1) / Mode.Ways;

    /// <summary>Cages that so many ports take.</summary>
    public int CagesFor(int ports) => (int)CagesFor((long)ports);

    /// <summary>Kinds of cage are told apart as objects: every switch has its own, and comparing all they say costs more than
    /// searching.</summary>
    public bool Equals(PortUse other) => ReferenceEquals(Cage, other.Cage) && Mode == other.Mode;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(RuntimeHelpers.GetHashCode(Cage), Mode);
}
