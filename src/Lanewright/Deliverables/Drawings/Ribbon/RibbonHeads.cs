using System.Collections.Immutable;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>The words over the columns of a ribbon. The first line of each is its heading.</summary>
/// <param name="NearPort">The port of the first end.</param>
/// <param name="NearBody">What sits in it.</param>
/// <param name="Cable">The cable.</param>
/// <param name="FarBody">What sits in each far end.</param>
/// <param name="FarPort">The ports of the far ends.</param>
internal sealed record RibbonHeads(
    ImmutableArray<string> NearPort,
    ImmutableArray<string> NearBody,
    ImmutableArray<string> Cable,
    ImmutableArray<string> FarBody,
    ImmutableArray<string> FarPort);
