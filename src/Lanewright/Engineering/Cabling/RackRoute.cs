using Lanewright.Engineering.Pathways;
using Lanewright.Model;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Cabling;

/// <summary>The one formula for the length of a cable between two places in racks.</summary>
public sealed class RackRoute(Policy policy, StandardsLibrary standards)
{
    private readonly Length unit = Length.FromMillimetres(standards.Practice("rack", "unit").Value);

    /// <summary>Height of the middle of a device above the floor.</summary>
    /// <param name="rack">Kind of its rack.</param>
    /// <param name="lowest">Its lowest rack unit, from 1.</param>
    /// <param name="units">Its height in rack units.</param>
    public Length Height(RackType rack, int lowest, int units)
    {
        var middle = lowest - 1 + (units / 2.0);
        return rack.Plinth + (unit * middle);
    }

    /// <summary>The height in a rack that is nearest to a pathway.</summary>
    /// <param name="rack">The rack.</param>
    /// <param name="pathway">Height of the pathway.</param>
    public Length Nearest(Rack rack, Length pathway) =>
        Length.Max(rack.Type.Plinth, Length.Min(Height(rack.Type, rack.Type.Units + 1, 0), pathway));

    /// <summary>The length: the difference of heights inside a rack, otherwise up to the pathway, across and down.</summary>
    /// <param name="from">One rack.</param>
    /// <param name="heightFrom">Height of the device in it.</param>
    /// <param name="to">The other rack.</param>
    /// <param name="heightTo">Height of the device in that.</param>
    /// <param name="across">The way at the height of the pathway; not looked at inside one rack.</param>
    public Length Between(Rack from, Length heightFrom, Rack to, Length heightTo, Length across) =>
        from.Index == to.Index
            ? Upright(heightFrom, heightTo)
            : Whole(across + (from.Hall.PathwayHeight - heightFrom).Abs() + (to.Hall.PathwayHeight - heightTo).Abs(), default);

    /// <summary>The same, part by part.</summary>
    /// <param name="from">One rack.</param>
    /// <param name="heightFrom">Height of the device in it.</param>
    /// <param name="to">The other rack.</param>
    /// <param name="heightTo">Height of the device in that.</param>
    /// <param name="across">The way at the height of the pathway; not looked at inside one rack.</param>
    public RouteParts Parts(Rack from, Length heightFrom, Rack to, Length heightTo, Length across)
    {
        var insideRacks = policy.InRack * 2;
        if (from.Index == to.Index)
        {
            var upright = (heightFrom - heightTo).Abs();
            return new RouteParts(
                default, upright, default, default, default, insideRacks, default, Upright(heightFrom, heightTo));
        }
        return OutOfRack(across, (from.Hall.PathwayHeight - heightFrom).Abs(), (to.Hall.PathwayHeight - heightTo).Abs(), default);
    }

    /// <summary>Along a way in pathways, part by part.</summary>
    /// <param name="way">The way between the two racks.</param>
    /// <param name="from">One rack.</param>
    /// <param name="heightFrom">Height of the device in it.</param>
    /// <param name="to">The other rack.</param>
    /// <param name="heightTo">Height of the device in that.</param>
    public RouteParts Along(CableWay way, Rack from, Length heightFrom, Rack to, Length heightTo) => OutOfRack(
        Length.FromMetres(way.Metres), (way.HeightAt(from, to) - heightFrom).Abs(), (way.HeightAt(to, from) - heightTo).Abs(),
        way.Surveyed);

    /// <summary>A way that leaves a rack, with its detours, a service loop and the way inside the rack at both ends.</summary>
    /// <param name="across">The way inside halls, along the pathways.</param>
    /// <param name="rise">From the one device to the pathway.</param>
    /// <param name="drop">From the pathway to the other.</param>
    /// <param name="surveyed">The way between two halls, which is as long as it was surveyed.</param>
    public RouteParts OutOfRack(Length across, Length rise, Length drop, Length surveyed)
    {
        var way = across + rise + drop;
        return new RouteParts(across, rise, drop, way * policy.Contingency.Value, policy.Service * 2, policy.InRack * 2, surveyed,
            Whole(way, surveyed));
    }

    private Length Upright(Length heightFrom, Length heightTo) => (heightFrom - heightTo).Abs() + (policy.InRack * 2);

    private Length Whole(Length way, Length surveyed) => WithSlack(way) + (policy.InRack * 2) + surveyed;

    /// <summary>A way with its detours, and a service loop at both ends.</summary>
    public Length WithSlack(Length way) => (way * (1 + policy.Contingency.Value)) + (policy.Service * 2);

    /// <summary>Along and across the rows of one hall.</summary>
    public static Length Across(Rack from, Rack to) => (from.X - to.X).Abs() + (from.Y - to.Y).Abs();
}
