using Lanewright.Text;

namespace Lanewright.Findings;

/// <summary>Another place that has to do with a finding.</summary>
/// <param name="Span">Where.</param>
/// <param name="Note">Why it matters.</param>
public sealed record RelatedPlace(SourceSpan Span, string Note);
