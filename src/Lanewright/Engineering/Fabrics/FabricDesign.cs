using System.Collections.Immutable;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>One design of the searched space: models and counts, not yet placed or priced.</summary>
internal sealed record FabricDesign
{
    public required FabricShape Shape { get; init; }

    /// <summary>Fabrics side by side.</summary>
    public int Planes { get; init; } = 1;

    /// <summary>The lowest tier for each kind of host.</summary>
    public required ImmutableArray<LeafChoice> Leaves { get; init; }

    /// <summary>The second tier of each plane: spines, or the aggregation switches of a pod.</summary>
    public UpperChoice? Upper { get; init; }

    /// <summary>The third tier: the cores that one aggregation switch of each pod is linked to.</summary>
    public UpperChoice? Core { get; init; }

    /// <summary>Links between the two of a collapsed pair; 0 for any other shape.</summary>
    public int PeerLinks { get; init; }

    /// <summary>At most so many upper switches stand in one rack.</summary>
    public int MostInRack { get; init; } = int.MaxValue;

    /// <summary>The one kind of host that is looked at, to price it by itself; -1 for all.</summary>
    public int OnlyKind { get; init; } = -1;

    /// <summary>Whether one box takes all hosts of a plane.</summary>
    public bool IsBox => Upper is null && OnlyKind < 0;

    /// <summary>Tiers of switches.</summary>
    public int Tiers => Core is not null ? 3 : Upper is not null ? 2 : 1;

    /// <summary>The design in a few words.</summary>
    public string Name
    {
        get
        {
            var leaves = string.Join(" and ", Leaves.Select(l => l.Build.Name).Distinct());
            var upper = Upper is null ? "" : $" under {Upper.Build.Name}";
            var core = Core is null ? "" : $" under {Core.Build.Name}";
            return leaves + upper + core;
        }
    }
}
