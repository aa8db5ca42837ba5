using Lanewright.Engineering.Lines;
using Lanewright.Findings;

namespace Lanewright.Rules.Lines;

/// <summary>A margin smaller than penalties that are known at one point only.</summary>
internal sealed class LineReserveThin() : LineCheckRule(
    "LW5113", nameof(LineReserveThin), [LineCheckNames.Reserve],
    "keep that much beside the requirement", Severity.Warning);
