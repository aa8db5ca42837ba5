using Lanewright.Engineering.Lines;

namespace Lanewright.Rules.Lines;

/// <summary>A line without amplifiers that loses too much.</summary>
internal sealed class UnamplifiedLossExceeded() : LineCheckRule(
    "LW5106", nameof(UnamplifiedLossExceeded), [LineCheckNames.UnamplifiedLoss],
    "lose less, or amplify");
