using Lanewright.Engineering.Links;

namespace Lanewright.Engineering.Lines;

/// <summary>A scheme that was tried and what became of it.</summary>
/// <param name="Scheme">Which.</param>
/// <param name="Verdict">What it comes to.</param>
/// <param name="Reason">Why, in a line.</param>
/// <param name="Price">What its parts cost; null where there is nothing to build, or nobody asks for prices.</param>
public sealed record TriedScheme(LineScheme Scheme, Verdict Verdict, string Reason, LinePrice? Price = null);
