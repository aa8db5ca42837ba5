using Lanewright.Engineering.Lines;

namespace Lanewright.Rules.Lines;

/// <summary>More dispersion than the receivers undo.</summary>
internal sealed class LineDispersionExceeded() : LineCheckRule(
    "LW5102", nameof(LineDispersionExceeded), [LineCheckNames.Dispersion],
    "shorten the line, measure the fibre, or take a type that bears more");
