using System.Collections.Immutable;

namespace Lanewright.Engineering.Fabrics;

/// <summary>The leaves of a kind of host in their places, without what is above them.</summary>
/// <param name="Price">What they take; of infinite cost where they do not fit there.</param>
/// <param name="Fault">What is in the way; empty otherwise.</param>
/// <param name="Racks">What stands in one rack, where a wish says what a rack may draw.</param>
internal sealed record LeafLevel(PartPrice Price, string Fault, ImmutableArray<LeafRack> Racks);
