using Lanewright.Engineering.Lines;

namespace Lanewright.Rules.Lines;

/// <summary>An amplifier asked for more power than it has.</summary>
internal sealed class AmplifierOutputExceeded() : LineCheckRule(
    "LW5110", nameof(AmplifierOutputExceeded), [LineCheckNames.Output],
    "launch less, carry fewer channels, or take a stronger model");
