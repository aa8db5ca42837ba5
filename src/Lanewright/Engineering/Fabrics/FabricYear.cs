using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>One year in the life of an option.</summary>
/// <param name="Year">The year, 0 at the start.</param>
/// <param name="Hosts">Hosts at its beginning.</param>
/// <param name="Leaves">Switches at its beginning that hosts are plugged into.</param>
/// <param name="Bought">What is spent at its beginning.</param>
/// <param name="Energy">Energy drawn until its end, losses and cooling included; none in the last, which only closes the count.</param>
public sealed record FabricYear(int Year, int Hosts, int Leaves, Money Bought, Energy Energy);
