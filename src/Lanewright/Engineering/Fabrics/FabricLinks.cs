using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>A set of links of an option. Ports are taken in the order of the links, cage by cage.</summary>
/// <param name="Name">Its name: letters, digits and hyphens.</param>
/// <param name="From">The lower side.</param>
/// <param name="To">The upper side.</param>
/// <param name="Rate">Rate of each link.</param>
/// <param name="RunLength">Above 0: so many devices of the lower side, one after another, are linked to each device of the upper side in
/// turn. 0: each is linked with each, lower side first.</param>
/// <param name="Parallel">Links of each pair.</param>
public sealed record FabricLinks(string Name, FabricEnd From, FabricEnd To, BitRate Rate, int RunLength, int Parallel);
