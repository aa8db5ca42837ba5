namespace Lanewright.Engineering.Fabrics;

/// <summary>How many hosts of the most numerous kind find room before the tier above the leaves, or the box itself, is full.</summary>
/// <param name="Unit">What is counted until then: <c>leaves</c>, <c>pods</c>, or <c>hosts</c> where a box takes them itself.</param>
/// <param name="Ports">Ports for them of one switch of the tier above.</param>
/// <param name="PortsEach">Ports that one of them takes there.</param>
/// <param name="Others">What units of other kinds of host take of it, below zero; 0 where they take none, or other ports.</param>
/// <param name="HostsEach">Hosts of one of them.</param>
/// <param name="Start">Hosts at the start.</param>
public sealed record GrowthRoom(string Unit, int Ports, int PortsEach, int Others, int HostsEach, int Start)
{
    /// <summary>Units that find room.</summary>
    public int Units => (Ports / PortsEach) + Others;

    /// <summary>Hosts that can be added to those of the start.</summary>
    public int Left => (Units * HostsEach) - Start;
}
