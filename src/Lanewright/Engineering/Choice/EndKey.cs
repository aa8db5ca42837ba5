using System.Runtime.CompilerServices;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Choice;

/// <summary>All that decides what may sit at an end of which nothing else is said.</summary>
/// <param name="Cage">The cage, told apart as an object.</param>
/// <param name="Ways">Ports it is split into.</param>
/// <param name="PowerLimit">The most a module may draw.</param>
/// <param name="Rate">The rate of a port.</param>
/// <param name="Side">Which end it is, as comparisons name it.</param>
internal readonly record struct EndKey(CageModel Cage, int Ways, Watts? PowerLimit, BitRate Rate, string Side)
{
    /// <inheritdoc/>
    public bool Equals(EndKey other) => ReferenceEquals(Cage, other.Cage) && Ways == other.Ways && PowerLimit == other.PowerLimit
        && Rate == other.Rate && Side == other.Side;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(RuntimeHelpers.GetHashCode(Cage), Ways, PowerLimit, Rate);
}
