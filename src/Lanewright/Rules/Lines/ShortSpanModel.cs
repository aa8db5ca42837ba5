using Lanewright.Engineering.Lines;
using Lanewright.Findings;

namespace Lanewright.Rules.Lines;

/// <summary>A span so short that the closed form of nonlinear noise is rough.</summary>
internal sealed class ShortSpanModel() : LineCheckRule(
    "LW5115", nameof(ShortSpanModel), [LineCheckNames.ShortSpan],
    "its nonlinear noise is a rougher figure than that of longer spans", Severity.Advice);
