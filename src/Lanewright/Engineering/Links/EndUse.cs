using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Links;

/// <summary>A cage and how it is run.</summary>
public sealed record EndUse
{
    /// <summary>The cage.</summary>
    public required CageModel Cage { get; init; }

    /// <summary>How it is split.</summary>
    public required PortMode Mode { get; init; }

    /// <summary>The most a module here may draw; null when not said.</summary>
    public Watts? PowerLimit { get; init; }

    /// <summary>Whether the module sits in an adapter.</summary>
    public bool UsesAdapter { get; init; }

    /// <summary>The code set at the port, when fixed.</summary>
    public string? FixedFec { get; init; }

    /// <summary>Auto-negotiation at the port, when fixed.</summary>
    public bool? FixedAutonegotiation { get; init; }
}
