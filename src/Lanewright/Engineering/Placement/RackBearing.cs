using System.Collections.Immutable;
using Lanewright.Engineering.Power;
using Lanewright.Engineering.Space;
using Lanewright.Model;
using Lanewright.Model.Devices;
using Lanewright.Model.Places;
using Lanewright.Model.Power;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Placement;

/// <summary>How many devices of a group racks bear beside what stays in them: by the weight and the power of the rack, by the floor below
/// it and by the feeds that lead there.</summary>
internal sealed class RackBearing
{
    private readonly RackBook book;
    private readonly Plan plan;
    private readonly DeviceGroup group;
    private readonly int thirstiest;
    private readonly int fewestFeeds;
    private readonly PhaseDealer dealer = new();
    private readonly ILookup<int, PowerFeed> feedsOf;
    private readonly HashSet<Hall> fedHalls;
    private readonly ImmutableArray<string> toldFeeds;

    /// <summary>Looks at a group.</summary>
    /// <param name="book">What stands in the racks.</param>
    /// <param name="moved">Its devices.</param>
    public RackBearing(RackBook book, ImmutableArray<int> moved)
    {
        (this.book, plan) = (book, book.Plan);
        group = plan.Devices.Group(moved[0]);
        thirstiest = moved.MaxBy(d => book.MaximumOf(d));
        feedsOf = plan.Power.SelectMany(f => f.Racks, (feed, rack) => (feed, rack)).ToLookup(f => f.rack, f => f.feed);
        fedHalls = [.. plan.Building.Racks.Where(r => feedsOf.Contains(r.Index)).Select(r => r.Hall)];
        toldFeeds = [.. group.Feeds.Intersect(plan.Power.Select(f => f.Name))];
        fewestFeeds = moved.Min(d => feedsOf[plan.Devices.RackIndex(d)].Count());
    }

    /// <summary>How many more it bears, as far as is known.</summary>
    /// <param name="rack">The rack.</param>
    /// <param name="stay">What stays in it.</param>
    /// <param name="most">How many are of any use.</param>
    public int Most(Rack rack, ImmutableArray<int> stay, int most)
    {
        var left = Math.Min(most, Math.Min(ByWeight(rack, stay), ByPower(rack, stay)));
        if (book.MaximumOf(thirstiest).Value > 0 && !IsFed(rack)) return 0;
        while (left > 0 && !FeedsBear(rack, stay, left)) left--;
        return left;
    }

    /// <summary>What is not known of whether it does.</summary>
    public BearingGaps Gaps(Rack rack, ImmutableArray<int> stay)
    {
        var groups = stay.Select(plan.Devices.Group).Append(group).ToList();
        var (type, hasFloor) = (rack.Type, rack.Hall.FloorLoad is not null);
        var gaps = BearingGaps.None;
        if ((hasFloor || type.WeightLimit is not null) && !groups.All(RackBook.IsWeightKnown)) gaps |= BearingGaps.DeviceWeight;
        if (hasFloor && type.OwnWeight is null) gaps |= BearingGaps.RackWeight;
        if ((type.PowerLimit is not null || feedsOf.Contains(rack.Index)) && !groups.All(RackBook.IsPowerKnown)) gaps |= BearingGaps.Power;
        return gaps;
    }

    private int ByWeight(Rack rack, ImmutableArray<int> stay)
    {
        var own = RackBook.WeightOf(group).Kilograms;
        var used = stay.Sum(d => RackBook.WeightOf(plan.Devices.Group(d)).Kilograms);
        var most = double.PositiveInfinity;
        if (rack.Type.WeightLimit is { } limit) most = limit.Kilograms - used;
        if (rack.Hall.FloorLoad is { } pressure)
        {
            var onFloor = used + (rack.Type.OwnWeight?.Kilograms ?? 0);
            most = Math.Min(most, FloorPressure.Bears(rack, pressure, plan.Standards).Kilograms - onFloor);
        }
        return Count(most, own);
    }

    private int ByPower(Rack rack, ImmutableArray<int> stay) => rack.Type.PowerLimit is { } limit
        ? Count(limit.Value - stay.Sum(d => book.MaximumOf(d).Value), book.MaximumOf(thirstiest).Value)
        : int.MaxValue;

    /// <summary>How often something goes into what is left; nothing goes where more is used than may be.</summary>
    private static int Count(double left, double own)
    {
        if (Rounding.IsBelow(left, 0)) return 0;
        return own <= 0 || double.IsInfinity(left)
            ? int.MaxValue
            : (int)Math.Min(int.MaxValue - 1, Rounding.Whole(Math.Max(0, left) / own));
    }

    /// <summary>Whether all feeds lead there that the group names, and no fewer than where it stands now; in a hall with feeds, one at
    /// least.</summary>
    private bool IsFed(Rack rack)
    {
        var names = feedsOf[rack.Index].Select(f => f.Name).ToHashSet();
        var least = fedHalls.Contains(rack.Hall) ? Math.Max(1, fewestFeeds) : fewestFeeds;
        return names.Count >= least && toldFeeds.All(names.Contains);
    }

    /// <summary>Whether no strip of the rack carries too much with so many more, with all feeds up and with one lost.</summary>
    private bool FeedsBear(Rack rack, ImmutableArray<int> stay, int more)
    {
        ImmutableArray<PowerFeed> feeds = [.. feedsOf[rack.Index]];
        ImmutableArray<StripUse> uses =
        [
            .. stay.Concat(Enumerable.Repeat(thirstiest, more)).Select(
                d => new StripUse(book.MaximumOf(d), StripLoads.FeedsOf(plan.Devices.Group(d).Feeds, feeds))),
        ];
        return feeds.All(f => StripLoads.BearsPlainly(uses, feeds, f, plan.Policy) || Bears(rack, uses, feeds, f));
    }

    private bool Bears(Rack rack, ImmutableArray<StripUse> uses, ImmutableArray<PowerFeed> feeds, PowerFeed feed)
    {
        var load = StripLoads.Of(rack, uses, feeds, feed, plan.Policy, dealer);
        return !Rounding.IsAbove(load.Highest.Value, load.Limit.Value)
            && !Rounding.IsAbove(load.AfterLoss.Value, load.Limit.Value);
    }
}
