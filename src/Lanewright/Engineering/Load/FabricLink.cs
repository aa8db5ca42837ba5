using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>Parallel physical links alike between two nodes. Where one end is a bundle of hosts, its members have equally many each,
/// numbered member by member.</summary>
/// <param name="A">One end, as an index into the nodes.</param>
/// <param name="B">The other end.</param>
/// <param name="Rate">What one physical link carries in each direction.</param>
/// <param name="Count">Physical links; 0 when all are down.</param>
public readonly record struct FabricLink(int A, int B, BitRate Rate, int Count)
{
    /// <summary>What all parallel links carry together in one direction, in Gb/s.</summary>
    public double Gigabits => Rate.Gigabits * Count;
}
