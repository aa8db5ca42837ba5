using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What cages of the switches of a catalogue can be.</summary>
/// <param name="FormFactors">Their form factors, in natural order.</param>
/// <param name="Rates">Rates of their ports, lowest first.</param>
public sealed record SwitchOffer(ImmutableArray<string> FormFactors, ImmutableArray<BitRate> Rates);
