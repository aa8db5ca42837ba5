using System.Collections.Immutable;
using Lanewright.Model.Plant;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>What trunks alike carry, and whether light finds its way through them.</summary>
/// <param name="Trunk">The trunks.</param>
/// <param name="Length">Length of each; null when it cannot be told.</param>
/// <param name="Ports">Ports that cables are patched to, those included for which none is left.</param>
/// <param name="FibresLit">Fibres that carry light.</param>
/// <param name="Polarity">Where transmitters and receivers meet.</param>
/// <param name="Tests">What the cabling test may show, edition by edition.</param>
public sealed record TrunkState(
    TrunkGroup Trunk, Length? Length, int Ports, int FibresLit, PolarityAnswer Polarity, ImmutableArray<TestLimit> Tests)
{
    /// <summary>Fibres there are.</summary>
    public int Fibres => Trunk.Count * Trunk.Positions;

    /// <summary>Trunks that have a cable in at least one port.</summary>
    public int InUse => (Math.Min(Ports, Trunk.Ports) + Trunk.PortsEach - 1) / Trunk.PortsEach;

    /// <summary>The edition whose test allows most; null where none gives a limit.</summary>
    public TestLimit? LoosestTest => Tests.Where(t => t.Limit is not null).MaxBy(t => t.Limit?.Value);

    /// <summary>Part of the fibres that carries light.</summary>
    public Share Utilisation => Share.From((double)FibresLit / Fibres);
}
