using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Model.Plant;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>What trunks alike carry, and whether light finds its way through them.</summary>
/// <param name="Trunk">The trunks.</param>
/// <param name="Length">Length of each; null when it cannot be told.</param>
/// <param name="Ports">Ports that cables are patched to, those included for which none is left.</param>
/// <param name="Alone">Where transmitters and receivers meet for a link through these trunks alone.</param>
/// <param name="Ways">The ways of links through them.</param>
/// <param name="Tests">What the cabling test may show, edition by edition.</param>
public sealed record TrunkState(
    TrunkGroup Trunk, Length? Length, int Ports, WayPolarity Alone, ImmutableArray<WayState> Ways,
    ImmutableArray<TestLimit> Tests)
{
    /// <summary>Fibres of each of them that carry light, in their order.</summary>
    public required ImmutableArray<int> LitEach { get; init; }

    /// <summary>Fibres that carry light.</summary>
    public int FibresLit => LitEach.Sum();

    /// <summary>Fibres there are.</summary>
    public int Fibres => Trunk.Count * Trunk.Fibres;

    /// <summary>Trunks that have a cable in at least one port.</summary>
    public int InUse => (Math.Min(Ports, Trunk.Ports) + Trunk.PortsEach - 1) / Trunk.PortsEach;

    /// <summary>Fibres that can still be patched: those behind free ports, of trunks in use and of idle ones.</summary>
    public int Spare => (Trunk.Ports - Math.Min(Ports, Trunk.Ports)) * (Trunk.Fibres / Trunk.PortsEach);

    /// <summary>Fibres that no further link can use: those of a patched array that its module leaves dark.</summary>
    public int Lost => Fibres - FibresLit - Spare;

    /// <summary>What holds of the links through them: the worst of their ways; where there are none, of the trunks alone.</summary>
    public WayPolarity Polarity =>
        Ways.Select(w => w.Polarity).OrderBy(p => p.Verdict == Verdict.Fail ? 0 : p.Verdict == Verdict.Unproven ? 1 : 2).FirstOrDefault()
        ?? Alone;

    /// <summary>Why a cassette and the trunk behind it do not mate; empty where they do.</summary>
    public string Misfit { get; init; } = "";

    /// <summary>Whether light gets through: as it is for the links, and no better than its ends mate.</summary>
    public Verdict Verdict => Misfit.Length > 0 ? Verdict.Fail : Polarity.Verdict;

    /// <summary>The edition whose test allows most; null where none gives a limit.</summary>
    public TestLimit? LoosestTest => Tests.Where(t => t.Limit is not null).MaxBy(t => t.Limit?.Value);

    /// <summary>Whether more loss was measured than the test of any edition may show.</summary>
    public bool IsAboveEveryTest =>
        Trunk.MeasuredLoss is { } measured && LoosestTest?.Limit is { } most && Rounding.IsAbove(measured.Value, most.Value);

    /// <summary>Part of the fibres that carries light.</summary>
    public Share Utilisation => Share.From((double)FibresLit / Fibres);
}
