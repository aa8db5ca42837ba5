using Lanewright.Engineering.Lines;

namespace Lanewright.Rules.Lines;

/// <summary>Too little light at the receivers.</summary>
internal sealed class LineReceiveLow() : LineCheckRule(
    "LW5105", nameof(LineReceiveLow), [LineCheckNames.ReceiveLow],
    "put an amplifier before the receivers, or lose less");
