using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>The worst case of one class of links in one direction.</summary>
/// <param name="Link">The link that stands for the class, as an index.</param>
/// <param name="FromA">Whether the direction is from end A to end B.</param>
/// <param name="ClassSize">Directed links that are alike.</param>
/// <param name="Utilisation">How full the matrix below makes it.</param>
/// <param name="AtMost">What no matrix can exceed; equal to <paramref name="Utilisation"/> but for rounding when the problem was
/// solved.</param>
/// <param name="Matrix">The traffic that does it, what crosses the link only.</param>
public sealed record LinkWorstCase(int Link, bool FromA, int ClassSize, Share Utilisation, Share AtMost, ImmutableArray<Flow> Matrix)
{
    private const double Rounding = 1e-9;

    /// <summary>Whether nothing worse exists, but for rounding.</summary>
    public bool IsExact => AtMost.Value - Utilisation.Value <= Rounding * Math.Max(1, AtMost.Value);
}
