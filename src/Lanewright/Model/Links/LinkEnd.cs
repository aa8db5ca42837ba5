using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;
using Lanewright.Text;

namespace Lanewright.Model.Links;

/// <summary>One side of a link statement: which devices, and what is fixed there.</summary>
public sealed record LinkEnd
{
    /// <summary>The devices, in order.</summary>
    public required ImmutableArray<int> Devices { get; init; }

    /// <summary>Their groups.</summary>
    public required ImmutableArray<DeviceGroup> Groups { get; init; }

    /// <summary>Cages to use; null when any will do.</summary>
    public PortFilter? Ports { get; init; }

    /// <summary>Ports each cage is split into; null when left open.</summary>
    public int? Ways { get; init; }

    /// <summary>The module, when fixed.</summary>
    public ModuleModel? Module { get; init; }

    /// <summary>The code set at the port, when fixed.</summary>
    public string? Fec { get; init; }

    /// <summary>Auto-negotiation at the port, when fixed.</summary>
    public bool? Autonegotiation { get; init; }

    /// <summary>Whether the module sits in an adapter.</summary>
    public bool UsesAdapter { get; init; }

    /// <summary>Where the plan says so.</summary>
    public SourceSpan Span { get; init; }
}
