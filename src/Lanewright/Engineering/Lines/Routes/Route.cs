using System.Collections.Immutable;

namespace Lanewright.Engineering.Lines.Routes;

/// <summary>A way through the graph without a place twice.</summary>
/// <param name="Edges">Its edges in order.</param>
/// <param name="Cost">What they cost together.</param>
public sealed record Route(ImmutableArray<int> Edges, double Cost);
