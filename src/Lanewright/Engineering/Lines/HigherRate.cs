using Lanewright.Engineering.Links;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>A type of a higher rate in the place of that of a line, in the same scheme.</summary>
/// <param name="TypeName">The type.</param>
/// <param name="Channels">How many channels.</param>
/// <param name="Spacing">How far apart they have to be.</param>
/// <param name="Verdict">What it comes to.</param>
public sealed record HigherRate(string TypeName, int Channels, Frequency Spacing, Verdict Verdict);
