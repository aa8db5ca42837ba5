using Lanewright.Engineering.Lines;

namespace Lanewright.Rules.Lines;

/// <summary>Channels that the type cannot be tuned to.</summary>
internal sealed class ChannelOutsideBand() : LineCheckRule(
    "LW5107", nameof(ChannelOutsideBand), [LineCheckNames.BandLow, LineCheckNames.BandHigh],
    "move the channels to where the type can be tuned");
