using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>Demands between bundles of hosts. Structured demands are kept as what they are made of, so that all-to-all of thousands of
/// bundles takes no square of memory.</summary>
public sealed class TrafficMatrix
{
    private TrafficMatrix() { }

    /// <summary>All demand, in Gb/s.</summary>
    public double TotalGigabits => throw new NotSupportedException();

    /// <summary>Demand named one by one.</summary>
    public static TrafficMatrix Of(IEnumerable<Flow> flows) => throw new NotSupportedException();

    /// <summary>Every host sends its rate, spread evenly over all other hosts named, those of its own bundle included.</summary>
    public static TrafficMatrix AllToAll(ImmutableArray<Terminal> terminals) => Spread(terminals, terminals);

    /// <summary>Every sender sends its rate, spread evenly over all receivers but itself: members of a bundle on both sides are the same
    /// hosts. Rates of receivers do not matter.</summary>
    public static TrafficMatrix Spread(ImmutableArray<Terminal> from, ImmutableArray<Terminal> to) => throw new NotSupportedException();

    /// <summary>A permutation: hosts are numbered bundle by bundle, and each sends to the one so many places on, round and round, at the
    /// lower of the two rates.</summary>
    public static TrafficMatrix Shift(ImmutableArray<Terminal> terminals, int places) => throw new NotSupportedException();

    /// <summary>Every sender sends its rate to one bundle.</summary>
    public static TrafficMatrix Incast(ImmutableArray<Terminal> senders, int receiver) => throw new NotSupportedException();

    /// <summary>Both demands at once.</summary>
    public static TrafficMatrix operator +(TrafficMatrix left, TrafficMatrix right) => throw new NotSupportedException();

    /// <summary>Adds what each node sends to one node, in Gb/s, to a vector over the nodes.</summary>
    public void AddColumn(int to, Span<double> gigabitsByNode) => throw new NotSupportedException();
}
