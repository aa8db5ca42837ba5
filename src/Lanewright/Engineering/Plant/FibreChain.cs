using System.Collections.Immutable;
using Lanewright.Standards;

namespace Lanewright.Engineering.Plant;

/// <summary>Parts of a fibre way from end to end, each as it is met: a transition leads from its duplex side to its array side where duplex
/// ports come before it, and back where arrays do.</summary>
/// <param name="Positions">Positions of its arrays, an even number.</param>
/// <param name="Parts">The parts, adapters between them included.</param>
/// <param name="IsAngled">Whether its array ends are angled.</param>
public sealed record FibreChain(int Positions, ImmutableArray<ArrayPart> Parts, bool IsAngled)
{
    /// <summary>Whether it begins at a duplex connector.</summary>
    public bool StartsDuplex => Parts[0].Kind is ArrayPartKind.Cord or ArrayPartKind.Transition;

    /// <summary>Whether it ends at one.</summary>
    public bool EndsDuplex => StartsDuplex != (Parts.Count(p => p.Kind == ArrayPartKind.Transition) % 2 == 1);

    /// <summary>Whether both ends are duplex connectors.</summary>
    public bool IsDuplex => StartsDuplex && EndsDuplex;

    /// <summary>Whether nothing but duplex cords makes up the way.</summary>
    public bool IsOfCords => Parts.All(p => p.Kind == ArrayPartKind.Cord);

    /// <summary>Whether <see cref="Link"/> leaves out duplex cords at its ends.</summary>
    public bool IsLinkWithoutCords => !IsOfCords && (Parts[0].Kind == ArrayPartKind.Cord || Parts[^1].Kind == ArrayPartKind.Cord);

    /// <summary>Whether an array is taken apart into duplex connectors.</summary>
    public bool IsFanOut => StartsDuplex != EndsDuplex;

    /// <summary>Where each position arrives, the pairs of duplex connectors counted as positions.</summary>
    public PositionMap Whole => Compose(Parts);

    /// <summary>The way without the duplex cords at its ends: from array to array, or from the duplex side of the first transition to that
    /// of the last.</summary>
    public PositionMap Link
    {
        get
        {
            if (IsOfCords) return Whole;
            var first = Parts[0].Kind == ArrayPartKind.Cord ? 1 : 0;
            var last = Parts[^1].Kind == ArrayPartKind.Cord ? Parts.Length - 1 : Parts.Length;
            return Compose(Parts[first..Math.Max(first, last)]);
        }
    }

    /// <summary>Parts that turn the order round: reversing cables and adapters.</summary>
    public int Reversals => Parts.Count(p => p.Kind is ArrayPartKind.Cable or ArrayPartKind.Adapter && p.Map == ArrayMap.Reversed);

    private PositionMap Compose(ImmutableArray<ArrayPart> parts)
    {
        var map = PositionMap.Of(ArrayMap.Straight, Positions);
        var isDuplex = StartsDuplex;
        foreach (var part in parts)
        {
            var own = PositionMap.Of(part.Map, Positions);
            var isTransition = part.Kind == ArrayPartKind.Transition;
            map = map.Then(isTransition && !isDuplex ? own.Backward() : own);
            if (isTransition) isDuplex = !isDuplex;
        }
        return map;
    }
}
