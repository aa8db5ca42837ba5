using Lanewright.Engineering.Lines;

namespace Lanewright.Rules.Lines;

/// <summary>An amplifier asked for more gain than it has.</summary>
internal sealed class AmplifierGainExceeded() : LineCheckRule(
    "LW5109", nameof(AmplifierGainExceeded), [LineCheckNames.Gain, LineCheckNames.Tilt],
    "launch less, lose less before it, or take a stronger model");
