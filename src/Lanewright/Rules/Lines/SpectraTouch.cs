using Lanewright.Engineering.Lines;
using Lanewright.Findings;

namespace Lanewright.Rules.Lines;

/// <summary>Spectra that reach into neighbouring channels.</summary>
internal sealed class SpectraTouch() : LineCheckRule(
    "LW5112", nameof(SpectraTouch), [LineCheckNames.Clearance],
    "space the channels wider, or make sure of wide flat filters and tightly shaped spectra", Severity.Advice);
