using Lanewright.Engineering.Links;

namespace Lanewright.Engineering.Lines;

/// <summary>A scheme that was tried and what became of it.</summary>
/// <param name="Scheme">Which.</param>
/// <param name="Verdict">What it comes to.</param>
/// <param name="Reason">Why, in a line.</param>
public sealed record TriedScheme(LineScheme Scheme, Verdict Verdict, string Reason);
