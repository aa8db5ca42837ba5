using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>Traffic from one bundle of hosts to another, or among the members of one.</summary>
/// <param name="From">The sending bundle, as an index into the nodes.</param>
/// <param name="To">The receiving bundle; the same as the sending one for traffic among its members.</param>
/// <param name="Rate">How much.</param>
public readonly record struct Flow(int From, int To, BitRate Rate);
