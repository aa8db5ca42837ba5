using System.Collections.Immutable;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>Everything a ribbon shows, before anything has a place on the sheet.</summary>
internal sealed record RibbonModel
{
    /// <summary>The first end: the one with all lanes.</summary>
    public required RibbonEnd Near { get; init; }

    /// <summary>The far ends: several for a fan-out.</summary>
    public required ImmutableArray<RibbonEnd> Far { get; init; }

    /// <summary>The paths between.</summary>
    public required ImmutableArray<Strand> Strands { get; init; }

    /// <summary>The words over the ribbon.</summary>
    public required RibbonHeads Heads { get; init; }

    /// <summary>The dimension lines.</summary>
    public required ImmutableArray<Span> Spans { get; init; }

    /// <summary>What a reader must know beside it.</summary>
    public required ImmutableArray<string> Notes { get; init; }

    /// <summary>Whether the first end of the drawing is the second of the link.</summary>
    public bool IsTurned { get; init; }

    /// <summary>Whether legs meet other cables in couplers before they reach the far ends.</summary>
    public bool HasCouplers { get; init; }

    /// <summary>Whether nothing joins the ends.</summary>
    public bool IsUnmade { get; init; }

    /// <summary>Mated pairs to be shown on the way; 0 for none, or for too many to draw.</summary>
    public int MatedPairs { get; init; }

    /// <summary>Whether an attenuator sits before the receivers of the far ends.</summary>
    public bool AttenuatesFar { get; init; }

    /// <summary>Whether one sits before the receivers of the first end.</summary>
    public bool AttenuatesNear { get; init; }
}
