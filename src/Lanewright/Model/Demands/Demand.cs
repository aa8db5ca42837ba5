using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Demands;

/// <summary>Traffic that a plan's network has to carry.</summary>
public sealed record Demand
{
    /// <summary>Its number in the plan.</summary>
    public required int Index { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Who sends to whom.</summary>
    public required DemandKind Kind { get; init; }

    /// <summary>Hosts that send, each once, in the order named.</summary>
    public required ImmutableArray<int> Senders { get; init; }

    /// <summary>Hosts that receive; the senders themselves where hosts send among one another.</summary>
    public required ImmutableArray<int> Receivers { get; init; }

    /// <summary>What each sender sends; null when it is what its ports carry together.</summary>
    public BitRate? Rate { get; init; }

    /// <summary>Few large flows each sender sends at a time, for their collisions; null when flows are many and small.</summary>
    public int? Flows { get; init; }

    /// <summary>The network that carries it; empty for the main one.</summary>
    public string Network { get; init; } = "";

    /// <summary>Names of other demands that run at the same time.</summary>
    public ImmutableArray<string> With { get; init; } = [];

    /// <summary>Where the plan says so.</summary>
    public SourceSpan Span { get; init; }
}
