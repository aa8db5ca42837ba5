using Lanewright.Engineering.Lines;

namespace Lanewright.Rules.Lines;

/// <summary>Polarisations that lose too differently.</summary>
internal sealed class PolarisationLossExceeded() : LineCheckRule(
    "LW5104", nameof(PolarisationLossExceeded), [LineCheckNames.Pdl],
    "use parts that treat both polarisations alike");
