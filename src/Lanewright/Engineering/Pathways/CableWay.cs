using System.Collections.Immutable;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Pathways;

/// <summary>The way of a cable from rack to rack.</summary>
/// <param name="Stretches">The stretches it lies in, from the rack of the lower number to the other.</param>
/// <param name="Metres">How long it is inside halls, without what goes up and down at the racks.</param>
/// <param name="LowHeight">Height of the pathway where it leaves the rack of the lower number.</param>
/// <param name="HighHeight">Height of the pathway where it leaves the other rack.</param>
/// <param name="Routes">The routes between halls on the way, in the same order; none inside a hall.</param>
public sealed record CableWay(
    ImmutableArray<int> Stretches, double Metres, double LowHeight, double HighHeight, ImmutableArray<HallRoute> Routes)
{
    /// <summary>How long its routes between halls were surveyed.</summary>
    public Length Surveyed => Routes.Aggregate(default(Length), (sum, route) => sum + route.Length);

    /// <summary>All of it: for telling which of two ways is longer.</summary>
    public double Total => Metres + Surveyed.Metres;

    /// <summary>What is to be closed to a way that keeps apart from this one.</summary>
    internal IEnumerable<int> Closing(WayNet net) => Routes.IsEmpty ? Stretches : Stretches.Concat(Routes.Select(net.ClosableOf));

    /// <summary>Height of the pathway where it leaves a rack for another.</summary>
    public Length HeightAt(Rack rack, Rack other) => Length.FromMetres(rack.Index < other.Index ? LowHeight : HighHeight);

    /// <summary>Whether it has a stretch in common with another.</summary>
    public bool Shares(CableWay other) => Stretches.Intersect(other.Stretches).Any();

    /// <inheritdoc/>
    public bool Equals(CableWay? other) => other is not null && Metres.Equals(other.Metres) && LowHeight.Equals(other.LowHeight)
        && HighHeight.Equals(other.HighHeight) && Routes.SequenceEqual(other.Routes) && Stretches.SequenceEqual(other.Stretches);

    /// <inheritdoc/>
    public override int GetHashCode() =>
        HashCode.Combine(Metres, Stretches.Length, Stretches.IsEmpty ? 0 : Stretches[0], Stretches.IsEmpty ? 0 : Stretches[^1]);
}
