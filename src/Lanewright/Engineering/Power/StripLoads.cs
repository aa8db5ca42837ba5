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
        FeedsOf(book.Plan, device, [.. book.Plan.Power.Where(f => f.Racks.Contains(rack.Index))]);

    private static StripLoad Of(RackBook book, RackContents contents, ImmutableArray<PowerFeed> feeds, PowerFeed feed)
    {
        var plan = book.Plan;
        var drawn = contents.Devices
            .Select(d => (Watts: book.MaximumOf(d), Feeds: FeedsOf(plan, d, feeds)))
            .Where(d => d.Feeds.Contains(feed))
            .OrderByDescending(d => d.Watts)
            .ToList();
        var places = Places(drawn.Select(d => d.Watts.Value / d.Feeds.Length), feed.Phases);
        var normal = Currents(drawn.Select(d => d.Watts.Value / d.Feeds.Length), places, feed, plan.Policy.PowerFactor.Value);
        var (worst, lost) = (normal.Max(), default(PowerFeed));
        foreach (var other in feeds.Where(f => f != feed))
        {
            var after = Currents(
                drawn.Select(d => d.Watts.Value / (d.Feeds.Contains(other) ? d.Feeds.Length - 1 : d.Feeds.Length)),
                places, feed, plan.Policy.PowerFactor.Value).Max();
            if (lost is null || after > worst) (worst, lost) = (after, other);
        }
        var limit = BreakerRule.Most(feed.Breaker, plan.Policy.BreakerShare.Value, feed.IsFullRated);
        return new StripLoad(contents.Rack, feed, limit, normal, worst, lost);
    }

    /// <summary>The feeds of a rack that a device is on: those its group names, or all of them.</summary>
    private static ImmutableArray<PowerFeed> FeedsOf(Plan plan, int device, ImmutableArray<PowerFeed> feeds)
    {
        var named = plan.Devices.Group(device).Feeds;
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
