using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Mating;

/// <summary>What lies between two ends, as far as it is known.</summary>
/// <param name="Fibre">Class of fibre; null when not said.</param>
/// <param name="Length">How long; null when not said.</param>
public sealed record MatingWay(Fibre? Fibre, Length? Length)
{
    /// <summary>Nothing is known.</summary>
    public static MatingWay Unknown { get; } = new(null, null);
}
