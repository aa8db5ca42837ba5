using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>Hosts that take part in a demand.</summary>
/// <param name="Node">Their bundle, as an index into the nodes.</param>
/// <param name="Members">How many of them take part.</param>
/// <param name="Rate">What each of them sends at most.</param>
public readonly record struct Terminal(int Node, int Members, BitRate Rate)
{
    /// <summary>What all of them send at most, in Gb/s.</summary>
    public double Gigabits => Rate.Gigabits * Members;
}
