using Lanewright.Engineering.Lines;

namespace Lanewright.Rules.Lines;

/// <summary>Polarisations that arrive too far apart.</summary>
internal sealed class LineDelaySpread() : LineCheckRule(
    "LW5103", nameof(LineDelaySpread), [LineCheckNames.Pmd, LineCheckNames.Dgd],
    "measure the fibre, replace old spans, or take a type that bears more");
