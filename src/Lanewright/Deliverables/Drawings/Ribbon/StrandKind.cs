namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>What a path is made of.</summary>
internal enum StrandKind
{
    /// <summary>A fibre that can be plugged.</summary>
    Fibre,

    /// <summary>A pair of conductors.</summary>
    Pair,

    /// <summary>Light inside a sealed cable.</summary>
    Light,
}
