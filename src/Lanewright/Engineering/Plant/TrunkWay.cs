using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>How links of a set go through trunks: one group, or several in series with cords between their panels.</summary>
/// <param name="Legs">The trunks in the order of the way.</param>
/// <param name="Bridges">Length that each cord between two panels needs, one fewer than the legs; null when it cannot be told.</param>
public sealed record TrunkWay(ImmutableArray<TrunkLeg> Legs, ImmutableArray<Length?> Bridges)
{
    /// <summary>The panel that the first ends are patched at.</summary>
    public int NearPanel => Legs[0].NearPanel;

    /// <summary>The panel that the second ends are patched at.</summary>
    public int FarPanel => Legs[^1].FarPanel;

    /// <summary>Length of all trunks, the cords between them not counted; null when one cannot be told.</summary>
    public Length? Length
    {
        get
        {
            var sum = default(Length);
            foreach (var leg in Legs)
            {
                if (leg.Length is not { } length) return null;
                sum += length;
            }
            return sum;
        }
    }

    /// <summary>Whether every length between the outermost panels is known.</summary>
    public bool IsMeasured => Length is not null && Bridges.All(b => b is not null);

    /// <summary>Mated pairs between the two outermost cords, those at them included.</summary>
    public int Connections => Legs.Sum(l => l.Trunk.Connections);

    /// <summary>Splices in each fibre.</summary>
    public int Splices => Legs.Sum(l => l.Trunk.Splices);

    /// <summary>Which legs are entered at their far panel, a bit for each.</summary>
    public short Turns => (short)Legs.Select((l, i) => l.IsTurned ? 1 << i : 0).Sum();

    /// <summary>The trunks by name, in order.</summary>
    public string Name => string.Join(", ", Legs.Select(l => l.Trunk.Name));
}
