using System.Collections.Immutable;

namespace Lanewright.Engineering.Lines;

/// <summary>The answer about a line: the first scheme that works, or the one that comes nearest, and all that were tried.</summary>
/// <param name="Question">What was asked.</param>
/// <param name="Design">The design.</param>
/// <param name="Tried">The schemes in the order they were tried.</param>
public sealed record LineAnswer(LineQuestion Question, LineDesign Design, ImmutableArray<TriedScheme> Tried);
