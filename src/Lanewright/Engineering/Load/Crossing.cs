namespace Lanewright.Engineering.Load;

/// <summary>How much of the traffic between two bundles of hosts crosses a link.</summary>
/// <param name="From">The sending bundle.</param>
/// <param name="To">The receiving bundle.</param>
/// <param name="Fraction">The part, above 0 and up to 1.</param>
internal readonly record struct Crossing(int From, int To, double Fraction);
