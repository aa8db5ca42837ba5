using System.Collections.Immutable;
using Lanewright.Engineering.Space;
using Lanewright.Model;
using Lanewright.Model.Places;
using Lanewright.Model.Power;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Power;

/// <summary>Loads of all strips. A device draws evenly from the feeds it is on; when one is lost, from the others. On three phases each
/// device is put where least is drawn so far, the largest first, and stays there.</summary>
public static class StripLoads
{
    /// <summary>The loads, rack by rack.</summary>
    public static ImmutableArray<StripLoad> Of(RackBook book)
    {
        var plan = book.Plan;
        var loads = ImmutableArray.CreateBuilder<StripLoad>();
        var feedsOf = plan.Power.SelectMany(f => f.Racks, (feed, rack) => (feed, rack)).ToLookup(f => f.rack, f => f.feed);
        foreach (var contents in book.Racks)
        {
            var feeds = feedsOf[contents.Rack.Index].ToImmutableArray();
            foreach (var feed in feeds) loads.Add(Of(book, contents, feeds, feed));
        }
        return loads.ToImmutable();
    }

    /// <summary>The feeds a device in a rack draws from, evenly.</summary>
    public static ImmutableArray<PowerFeed> FeedsOf(RackBook book, Rack rack, int device) =>
        FeedsOf(book.Plan.Devices.Group(device).Feeds, [.. book.Plan.Power.Where(f => f.Racks.Contains(rack.Index))]);

    private static StripLoad Of(RackBook book, RackContents contents, ImmutableArray<PowerFeed> feeds, PowerFeed feed) => Of(
        contents.Rack,
        [.. contents.Devices.Select(d => new StripUse(book.MaximumOf(d), FeedsOf(book.Plan.Devices.Group(d).Feeds, feeds)))],
        feeds, feed, book.Plan.Policy);

    /// <summary>The load of one strip.</summary>
    /// <param name="rack">Its rack.</param>
    /// <param name="devices">What stands in the rack.</param>
    /// <param name="feeds">All feeds of the rack.</param>
    /// <param name="feed">The feed of the strip.</param>
    /// <param name="policy">What holds for breakers and power factors.</param>
    public static StripLoad Of(
        Rack rack, ImmutableArray<StripUse> devices, ImmutableArray<PowerFeed> feeds, PowerFeed feed, Policy policy)
    {
        var drawn = devices.Where(d => d.Feeds.Contains(feed)).OrderByDescending(d => d.Watts).ToList();
        var places = Places(drawn.Select(d => d.Watts.Value / d.Feeds.Length), feed.Phases);
        var normal = Currents(drawn.Select(d => d.Watts.Value / d.Feeds.Length), places, feed, policy.PowerFactor.Value);
        var (worst, lost) = (normal.Max(), default(PowerFeed));
        foreach (var other in feeds.Where(f => f != feed))
        {
            var after = Currents(
                drawn.Select(d => d.Watts.Value / (d.Feeds.Contains(other) ? d.Feeds.Length - 1 : d.Feeds.Length)),
                places, feed, policy.PowerFactor.Value).Max();
            if (lost is null || after > worst) (worst, lost) = (after, other);
        }
        var limit = BreakerRule.Most(feed.Breaker, policy.BreakerShare.Value, feed.IsFullRated);
        return new StripLoad(rack, feed, limit, normal, worst, lost);
    }

    /// <summary>The feeds of a rack that a device is on: those its group names, or all of them.</summary>
    /// <param name="named">The feeds its group names; empty where it names none.</param>
    /// <param name="feeds">All feeds of the rack.</param>
    public static ImmutableArray<PowerFeed> FeedsOf(ImmutableArray<string> named, ImmutableArray<PowerFeed> feeds)
    {
        var own = feeds.Where(f => named.Contains(f.Name)).ToImmutableArray();
        return own.IsEmpty ? feeds : own;
    }

    /// <summary>The phase, or pair of phases, of each load.</summary>
    private static ImmutableArray<int> Places(IEnumerable<double> watts, int phases)
    {
        var sums = new double[phases];
        var places = ImmutableArray.CreateBuilder<int>();
        foreach (var load in watts)
        {
            var least = Array.IndexOf(sums, sums.Min());
            sums[least] += load;
            places.Add(least);
        }
        return places.ToImmutable();
    }

    private static ImmutableArray<Amperes> Currents(
        IEnumerable<double> watts, ImmutableArray<int> places, PowerFeed feed, double powerFactor)
    {
        var sums = new double[feed.Phases];
        foreach (var (load, place) in watts.Zip(places)) sums[place] += load;
        var isWye = feed.Phases > 1 && !feed.IsPhaseToPhase;
        var volts = isWye ? ThreePhase.ToNeutral(feed.Volts) : feed.Volts;
        var sections = sums.Select(s => ThreePhase.Between(Watts.From(s), volts, powerFactor)).ToImmutableArray();
        if (feed.Phases == 1 || isWye) return sections;
        // Section i lies between phase i and the next one.
        return
        [
            .. Enumerable.Range(0, sections.Length)
                .Select(i => ThreePhase.OfPhase(sections[i], sections[(i + sections.Length - 1) % sections.Length])),
        ];
    }
}
