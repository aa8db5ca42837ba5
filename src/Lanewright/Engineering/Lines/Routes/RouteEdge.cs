using System.Collections.Immutable;

namespace Lanewright.Engineering.Lines.Routes;

/// <summary>A way between two places, with all that it shares with others.</summary>
/// <param name="A">One place.</param>
/// <param name="B">The other.</param>
/// <param name="Cost">What using it costs, not below zero: its length, or money.</param>
/// <param name="Risks">Numbers of what may fail with it, such as ducts; it itself is a risk of its own and not among them.</param>
public sealed record RouteEdge(int A, int B, double Cost, ImmutableArray<int> Risks)
{
    /// <summary>The other end.</summary>
    public int Other(int end) => end == A ? B : A;
}
