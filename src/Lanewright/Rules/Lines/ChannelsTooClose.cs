using Lanewright.Engineering.Lines;

namespace Lanewright.Rules.Lines;

/// <summary>Channels closer than their symbol rate allows.</summary>
internal sealed class ChannelsTooClose() : LineCheckRule(
    "LW5108", nameof(ChannelsTooClose), [LineCheckNames.Spacing],
    "space them wider, or take a type with fewer symbols a second");
