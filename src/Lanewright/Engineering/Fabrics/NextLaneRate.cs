using System.Collections.Immutable;

namespace Lanewright.Engineering.Fabrics;

/// <summary>How much of an option still serves when lanes become one step faster. A module serves that goes into a cage of the next lane
/// rate which still lists its form and its lanes; a fibre over which an interface type of faster lanes runs as far and bears the loss: same
/// glass, same count, same connector, same wavelengths a fibre.</summary>
/// <param name="Kinds">Modules and fibres in use, kind by kind.</param>
public sealed record NextLaneRate(ImmutableArray<NextLaneKind> Kinds)
{
    /// <summary>Modules in use.</summary>
    public long Modules => Kinds.Where(k => !k.IsFibre).Sum(k => k.Count);

    /// <summary>Those that still serve.</summary>
    public long ModulesServing => Kinds.Where(k => k is { IsFibre: false, Serves: true }).Sum(k => k.Count);

    /// <summary>Fibres in use.</summary>
    public long Fibres => Kinds.Where(k => k.IsFibre).Sum(k => k.Count);

    /// <summary>Those that still serve.</summary>
    public long FibresServing => Kinds.Where(k => k is { IsFibre: true, Serves: true }).Sum(k => k.Count);
}
