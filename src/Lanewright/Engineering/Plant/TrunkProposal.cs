using System.Collections.Immutable;
using Lanewright.Model.Plant;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>What could be laid in the place of a group of trunks.</summary>
/// <param name="State">The group as planned.</param>
/// <param name="Wanted">Ports that are wanted, growth included.</param>
/// <param name="Kinds">The kinds of trunk that fit there.</param>
/// <param name="Frontier">The mixes of them worth a look.</param>
public sealed record TrunkProposal(TrunkState State, int Wanted, ImmutableArray<TrunkKind> Kinds, TrunkFrontier Frontier)
{
    /// <summary>The group.</summary>
    public TrunkGroup Trunk => State.Trunk;

    /// <summary>Price of what the plan lays; null where its length is not known.</summary>
    public Money? Planned { get; init; }

    /// <summary>The mix of fewest trunks, the cheapest of those; null where nothing fits.</summary>
    public TrunkMix? Fewest => Frontier.Mixes.FirstOrDefault();

    /// <summary>The cheapest mix that leaves every panel enough places; null where there is none.</summary>
    public TrunkMix? Cheapest { get; init; }

    /// <summary>The part of a mix's fibres that today's links would light.</summary>
    public double Lit(TrunkMix mix) => mix.Fibres == 0 ? 0 : (double)State.FibresLit / mix.Fibres;
}
