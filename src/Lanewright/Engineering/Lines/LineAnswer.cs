using System.Collections.Immutable;

namespace Lanewright.Engineering.Lines;

/// <summary>The answer about a line: the cheapest scheme that works, or the one that comes nearest, and all that were tried.</summary>
/// <param name="Question">What was asked.</param>
/// <param name="Design">The design.</param>
/// <param name="Tried">The schemes in the order they were tried.</param>
/// <param name="Price">What the parts of the design cost; null where there is nothing to build, or nobody asks for prices.</param>
public sealed record LineAnswer(LineQuestion Question, LineDesign Design, ImmutableArray<TriedScheme> Tried, LinePrice? Price = null);
