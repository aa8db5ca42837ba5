using Lanewright.Standards;

namespace Lanewright.Model.Links;

/// <summary>One end of a question about two ends: a type, perhaps the module it is in, perhaps the cage that is in.</summary>
public sealed record PortDescription
{
    /// <summary>The optical interface type, or null for copper.</summary>
    public InterfaceType? Optical { get; init; }

    /// <summary>The copper interface type, or null for optics.</summary>
    public CopperType? Copper { get; init; }

    /// <summary>The module's body; null when not said.</summary>
    public FormFactor? Module { get; init; }

    /// <summary>The cage; null when not said.</summary>
    public FormFactor? Cage { get; init; }

    /// <summary>Lane count and fastest lane of the cage, such as <c>8x50G</c>; empty without a cage.</summary>
    public string CageLanes { get; init; } = "";

    /// <summary>The type's name.</summary>
    public string TypeName => Optical?.Name ?? Copper?.Name ?? "";

    /// <summary>The type's rate.</summary>
    public Quantities.BitRate Rate => Optical?.Rate ?? Copper?.Rate ?? default;
}
