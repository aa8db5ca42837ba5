using System.Collections.Immutable;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Pathways;

/// <summary>The way of a cable from rack to rack.</summary>
/// <param name="Stretches">The stretches it lies in, from the rack of the lower number to the other.</param>
/// <param name="Metres">How long it is inside halls, without what goes up and down at the racks.</param>
/// <param name="LowHeight">Height of the pathway where it leaves the rack of the lower number.</param>
/// <param name="HighHeight">Height of the pathway where it leaves the other rack.</param>
/// <param name="Route">The route between halls on the way; null inside a hall.</param>
public sealed record CableWay(ImmutableArray<int> Stretches, double Metres, double LowHeight, double HighHeight, HallRoute? Route)
{
    /// <summary>All of it: for telling which of two ways is longer.</summary>
    public double Total => Metres + (Route?.Length.Metres ?? 0);

    /// <summary>What is to be closed to a way that keeps apart from this one.</summary>
    internal IEnumerable<int> Closing(WayNet net) => Route is { } route ? Stretches.Append(net.ClosableOf(route)) : Stretches;

    /// <summary>Height of the pathway where it leaves a rack for another.</summary>
    public Length HeightAt(Rack rack, Rack other) => Length.FromMetres(rack.Index < other.Index ? LowHeight : HighHeight);

    /// <summary>Whether it has a stretch in common with another.</summary>
    public bool Shares(CableWay other) => Stretches.Intersect(other.Stretches).Any();

    /// <inheritdoc/>
    public bool Equals(CableWay? other) => other is not null && Metres.Equals(other.Metres) && LowHeight.Equals(other.LowHeight)
        && HighHeight.Equals(other.HighHeight) && Equals(Route, other.Route) && Stretches.SequenceEqual(other.Stretches);

    /// <inheritdoc/>
    public override int GetHashCode() =>
        HashCode.Combine(Metres, Stretches.Length, Stretches.IsEmpty ? 0 : Stretches[0], Stretches.IsEmpty ? 0 : Stretches[^1]);
}
