using Lanewright.Quantities;

namespace Lanewright.Engineering.Cabling;

/// <summary>What the length of a cable between two places in racks is made of.</summary>
/// <param name="Across">The way at the height of the pathway, inside the halls.</param>
/// <param name="Rise">From the one device up to the pathway; inside one rack, from the one to the other.</param>
/// <param name="Drop">From the pathway down to the other.</param>
/// <param name="Detours">What is added for detours.</param>
/// <param name="Loops">Service loops at both ends.</param>
/// <param name="InsideRacks">From the side of each rack to the port.</param>
/// <param name="Surveyed">The way between two halls as it was surveyed.</param>
/// <param name="Total">All together, as it was reckoned.</param>
public readonly record struct RouteParts(
    Length Across, Length Rise, Length Drop, Length Detours, Length Loops, Length InsideRacks, Length Surveyed, Length Total);
