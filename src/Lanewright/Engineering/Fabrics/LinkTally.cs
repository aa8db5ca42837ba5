using System.Collections.Immutable;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What a set of links takes.</summary>
/// <param name="Lines">How its links are made.</param>
/// <param name="FromWatts">Watts of modules and cable ends in each device of the lower side, in order.</param>
/// <param name="ToWatts">The same of the upper side.</param>
/// <param name="Fault">What is in the way where a link cannot be made; empty otherwise.</param>
internal sealed record LinkTally(ImmutableArray<TallyLine> Lines, double[] FromWatts, double[] ToWatts, string Fault)
{
    /// <summary>Where its cables lie; told only in halls with pathways.</summary>
    public ImmutableArray<LaidCables> Laid { get; init; } = [];
}
