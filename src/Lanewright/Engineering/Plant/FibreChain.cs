using System.Collections.Immutable;
using Lanewright.Standards;

namespace Lanewright.Engineering.Plant;

/// <summary>Parts of a fibre way from end to end, each as it is met. A transition is met from its duplex side at the near end and from its
/// array side at the far end.</summary>
/// <param name="Positions">Positions of its arrays, an even number.</param>
/// <param name="Parts">The parts, adapters between them included.</param>
/// <param name="IsAngled">Whether its array ends are angled.</param>
public sealed record FibreChain(int Positions, ImmutableArray<ArrayPart> Parts, bool IsAngled)
{
    /// <summary>Whether both ends are duplex connectors.</summary>
    public bool IsDuplex => Parts.Any(p => p.Kind is ArrayPartKind.Cord or ArrayPartKind.Transition);

    /// <summary>The way without its duplex cords: from array to array, or from the duplex side of one transition to that of the
    /// other.</summary>
    public PositionMap Link
    {
        get
        {
            var map = PositionMap.Of(ArrayMap.Straight, Positions);
            var isInside = false;
            foreach (var part in Parts.Where(p => p.Kind != ArrayPartKind.Cord))
            {
                var own = PositionMap.Of(part.Map, Positions);
                map = map.Then(isInside && part.Kind == ArrayPartKind.Transition ? own.Backward() : own);
                if (part.Kind == ArrayPartKind.Transition) isInside = !isInside;
            }
            return map;
        }
    }

    /// <summary>Where a fibre of a duplex port comes out of the duplex cord at the near end; the same fibre without a cord.</summary>
    public int ThroughNearCord(int fibre) => Through(Parts[0], fibre);

    /// <summary>The same at the far end.</summary>
    public int ThroughFarCord(int fibre) => Parts.Length > 1 ? Through(Parts[^1], fibre) : fibre;

    /// <summary>Parts that turn the order round: reversing cables and adapters.</summary>
    public int Reversals => Parts.Count(p => p.Kind is ArrayPartKind.Cable or ArrayPartKind.Adapter && p.Map == ArrayMap.Reversed);

    private int Through(ArrayPart part, int fibre) =>
        part.Kind == ArrayPartKind.Cord ? PositionMap.Of(part.Map, Positions)[fibre] : fibre;
}
