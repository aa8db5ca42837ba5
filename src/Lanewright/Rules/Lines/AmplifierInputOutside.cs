using Lanewright.Engineering.Lines;

namespace Lanewright.Rules.Lines;

/// <summary>An amplifier whose noise is not specified at its input level.</summary>
internal sealed class AmplifierInputOutside() : LineCheckRule(
    "LW5111", nameof(AmplifierInputOutside), [LineCheckNames.InputLow, LineCheckNames.InputHigh],
    "bring more or less light to it, or state a noise figure that holds there");
