using Lanewright.Model.Plant;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>How links of a set go through their trunks.</summary>
/// <param name="Trunk">The trunks.</param>
/// <param name="IsTurned">Whether the links' first ends are patched at the trunks' far panel.</param>
/// <param name="Length">Length of each trunk; null when it cannot be told.</param>
public sealed record TrunkWay(TrunkGroup Trunk, bool IsTurned, Length? Length)
{
    /// <summary>The panel that the first ends are patched at.</summary>
    public int NearPanel => IsTurned ? Trunk.To : Trunk.From;

    /// <summary>The panel that the second ends are patched at.</summary>
    public int FarPanel => IsTurned ? Trunk.From : Trunk.To;
}
