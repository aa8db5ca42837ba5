using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Choice;

/// <summary>One kind of link end: a kind of cage, how it is split, and the power it gives.</summary>
/// <param name="Index">Its number in the plan.</param>
/// <param name="Cage">The cage.</param>
/// <param name="Ways">Ports it is split into.</param>
/// <param name="PowerLimit">The most a module may draw; null when not said.</param>
public sealed record EndSpec(int Index, CageModel Cage, int Ways, Watts? PowerLimit)
{
    /// <summary>The other kinds of cage its device has: what fails here may do there.</summary>
    public ImmutableArray<CageModel> Elsewhere { get; init; } = [];
}
