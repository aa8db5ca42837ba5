using System.Collections.Immutable;
using Lanewright.Engineering.Space;
using Lanewright.Model;
using Lanewright.Model.Places;
using Lanewright.Model.Power;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Power;

/// <summary>Loads of all strips. A device draws evenly from the feeds it is on; when one is lost, from the others. On three phases devices
/// are dealt out so that the fullest phase carries least, and from rack to rack so that those of the feed stay even.</summary>
public sealed class StripLoads
{
    private static readonly ImmutableArray<ImmutableArray<int>> Turns =
        [[0, 1, 2], [1, 2, 0], [2, 0, 1], [0, 2, 1], [2, 1, 0], [1, 0, 2]];

    private readonly Policy policy;
    private readonly PhaseDealer dealer;
    private readonly Dictionary<PowerFeed, double[]> ofFeed = [];

    private StripLoads(Policy policy, PhaseDealer dealer) => (this.policy, this.dealer) = (policy, dealer);

    /// <summary>The loads, rack by rack.</summary>
    public static ImmutableArray<StripLoad> Of(RackBook book)
    {
        var plan = book.Plan;
        var strips = new StripLoads(plan.Policy, new PhaseDealer());
        var loads = ImmutableArray.CreateBuilder<StripLoad>();
        var feedsOf = plan.Power.SelectMany(f => f.Racks, (feed, rack) => (feed, rack)).ToLookup(f => f.rack, f => f.feed);
        foreach (var contents in book.Racks)
        {
            ImmutableArray<PowerFeed> feeds = [.. feedsOf[contents.Rack.Index]];
            ImmutableArray<StripUse> uses =
            [
                .. contents.Devices.Select(
                    d => new StripUse(book.MaximumOf(d), FeedsOf(plan.Devices.Group(d).Feeds, feeds), d)),
            ];
            foreach (var feed in feeds) loads.Add(strips.Of(contents.Rack, uses, feeds, feed));
        }
        return loads.ToImmutable();
    }

    /// <summary>The feeds a device in a rack draws from, evenly.</summary>
    public static ImmutableArray<PowerFeed> FeedsOf(RackBook book, Rack rack, int device) =>
        FeedsOf(book.Plan.Devices.Group(device).Feeds, [.. book.Plan.Power.Where(f => f.Racks.Contains(rack.Index))]);

    /// <summary>The load of one strip by itself.</summary>
    /// <param name="rack">Its rack.</param>
    /// <param name="devices">What stands in the rack.</param>
    /// <param name="feeds">All feeds of the rack.</param>
    /// <param name="feed">The feed of the strip.</param>
    /// <param name="policy">What holds for breakers and power factors.</param>
    /// <param name="dealer">Knows racks alike that were dealt before.</param>
    public static StripLoad Of(
        Rack rack, ImmutableArray<StripUse> devices, ImmutableArray<PowerFeed> feeds, PowerFeed feed, Policy policy, PhaseDealer dealer) =>
        new StripLoads(policy, dealer).Of(rack, devices, feeds, feed);

    private StripLoad Of(Rack rack, ImmutableArray<StripUse> devices, ImmutableArray<PowerFeed> feeds, PowerFeed feed)
    {
        var deal = Deal([.. devices.Where(d => d.Feeds.Contains(feed)).OrderByDescending(d => d.Watts)], feed, out var plugs);
        var normal = Currents(plugs, p => p.Drawn, feed, policy);
        var (worst, lost) = (normal.Max(), default(PowerFeed));
        foreach (var other in feeds.Where(f => f != feed))
        {
            var after = Currents(plugs, p => p.DrawnWithout(other), feed, policy).Max();
            if (lost is null || after > worst) (worst, lost) = (after, other);
        }
        var limit = BreakerRule.Most(feed.Breaker, policy.BreakerShare.Value, feed.IsFullRated);
        return new StripLoad(rack, feed, limit, normal, worst, lost) { Plugs = plugs, IsBestOrder = deal.IsBest };
    }

    /// <summary>Whether a strip bears what stands in its rack however outlets are chosen with a little care: the largest load where least
    /// is drawn, which no best order is fuller than. Only told where all devices are on all feeds, so that a lost one loads all alike;
    /// no in any other case says nothing.</summary>
    /// <param name="devices">What stands in the rack.</param>
    /// <param name="feeds">All feeds of the rack.</param>
    /// <param name="feed">The feed of the strip.</param>
    /// <param name="policy">What holds for breakers and power factors.</param>
    public static bool BearsPlainly(
        ImmutableArray<StripUse> devices, ImmutableArray<PowerFeed> feeds, PowerFeed feed, Policy policy)
    {
        if (devices.Any(d => d.Feeds.Length != feeds.Length)) return false;
        var sums = new double[feed.Phases];
        foreach (var watts in devices.Select(d => d.Watts.Value).OrderDescending())
            sums[Array.IndexOf(sums, sums.Min())] += watts / Math.Max(1, feeds.Length - 1);
        var limit = BreakerRule.Most(feed.Breaker, policy.BreakerShare.Value, feed.IsFullRated);
        return PhaseCurrents.Of(sums, feed, policy.PowerFactor.Value).Max() < limit * Nearly;
    }

    /// <summary>Below a limit by more than the last places.</summary>
    private const double Nearly = 0.999999;

    /// <summary>The feeds of a rack that a device is on: those its group names, or all of them.</summary>
    /// <param name="named">The feeds its group names; empty where it names none.</param>
    /// <param name="feeds">All feeds of the rack.</param>
    public static ImmutableArray<PowerFeed> FeedsOf(ImmutableArray<string> named, ImmutableArray<PowerFeed> feeds)
    {
        var own = feeds.Where(f => named.Contains(f.Name)).ToImmutableArray();
        return own.IsEmpty ? feeds : own;
    }

    /// <summary>The currents of a feed that plugs draw.</summary>
    /// <param name="plugs">The plugs, of one strip or of several.</param>
    /// <param name="drawn">What each draws.</param>
    /// <param name="feed">The feed.</param>
    /// <param name="policy">What holds for power factors.</param>
    public static ImmutableArray<Amperes> Currents(
        IEnumerable<StripPlug> plugs, Func<StripPlug, Watts> drawn, PowerFeed feed, Policy policy)
    {
        var sums = new double[feed.Phases];
        foreach (var plug in plugs) sums[plug.Section] += drawn(plug).Value;
        return PhaseCurrents.Of(sums, feed, policy.PowerFactor.Value);
    }

    /// <summary>Sections of one strip are alike, so the turn is taken that leaves the feed most even.</summary>
    private PhaseDeal Deal(ImmutableArray<StripUse> uses, PowerFeed feed, out ImmutableArray<StripPlug> plugs)
    {
        var deal = dealer.Of([.. uses.Select(u => u.Watts.Value / u.Feeds.Length)], feed.Phases, feed.IsPhaseToPhase);
        if (!ofFeed.TryGetValue(feed, out var sums)) ofFeed[feed] = sums = new double[feed.Phases];
        var own = new double[feed.Phases];
        for (var i = 0; i < uses.Length; i++) own[deal.Sections[i]] += uses[i].Watts.Value / uses[i].Feeds.Length;
        var turn = feed.Phases == 1
            ? [0]
            : Turns.MinBy(t => Enumerable.Range(0, own.Length).Max(s => sums[t[s]] + own[s]));
        for (var s = 0; s < own.Length; s++) sums[turn[s]] += own[s];
        plugs = [.. uses.Select((u, i) => new StripPlug(u, turn[deal.Sections[i]]))];
        return deal;
    }
}
