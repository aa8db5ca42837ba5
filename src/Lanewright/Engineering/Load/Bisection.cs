using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>What one half of the hosts can send to the other at once, in one direction, at the worst division into halves.</summary>
/// <param name="AtLeast">Proven lower bound.</param>
/// <param name="AtMost">Proven upper bound.</param>
/// <param name="Proof">How the bounds were found.</param>
public sealed record Bisection(BitRate AtLeast, BitRate AtMost, BisectionProof Proof)
{
    /// <summary>Whether both bounds are the value.</summary>
    public bool IsExact => AtLeast == AtMost;

    /// <summary>Computes the bisection of the terminals, each of which sends at most its rate.</summary>
    public static Bisection Of(FabricGraph graph, ImmutableArray<Terminal> terminals) => throw new NotSupportedException();
}
