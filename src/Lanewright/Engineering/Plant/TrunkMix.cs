using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>Trunks of one kind or of several that together have the ports a group needs.</summary>
/// <param name="Counts">How many of each kind, none left out.</param>
public sealed record TrunkMix(ImmutableArray<(TrunkKind Kind, int Count)> Counts)
{
    /// <summary>Trunks of all kinds.</summary>
    public int Trunks => Counts.Sum(c => c.Count);

    /// <summary>Their ports.</summary>
    public int Ports => Counts.Sum(c => c.Count * c.Kind.Ports);

    /// <summary>Their fibres.</summary>
    public int Fibres => Counts.Sum(c => c.Count * c.Kind.Fibres);

    /// <summary>Their price with cassettes and adapters.</summary>
    public Money Price => Counts.Aggregate(Money.Zero, (sum, c) => sum + (c.Kind.Price * c.Count));
}
