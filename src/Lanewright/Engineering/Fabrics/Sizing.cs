using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Answers what fabric to buy. One instance remembers the prices of links, so that asking again with other wishes is
/// cheap.</summary>
public sealed class Sizing(FinderContext context)
{
    /// <summary>The options, best first.</summary>
    public SizingAnswer Of(WantedFabric wanted)
    {
        _ = context;
        return new SizingAnswer([], [], null);
    }

    /// <summary>Designs around the wishes: for every shape and every set of wishes dropped, the cheapest that keeps the rest is among
    /// them. What each asks for tells which wishes it breaks.</summary>
    public ImmutableArray<FabricNeeds> Candidates(WantedFabric wanted) => [];
}
