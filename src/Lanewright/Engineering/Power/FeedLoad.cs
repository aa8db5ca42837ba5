using System.Collections.Immutable;
using Lanewright.Engineering.Space;
using Lanewright.Model.Power;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Power;

/// <summary>What a feed carries over all its racks when everything draws its most: what its board, its cable and what stands before them
/// have to bear.</summary>
/// <param name="Feed">The feed.</param>
/// <param name="Strips">Strips with a device.</param>
/// <param name="Whole">With all feeds up.</param>
/// <param name="Lost">The other feed whose loss loads this one most; null where none has a device in common with it.</param>
/// <param name="AfterLoss">With that feed lost.</param>
public sealed record FeedLoad(PowerFeed Feed, int Strips, FeedDraw Whole, PowerFeed? Lost, FeedDraw AfterLoss)
{
    /// <summary>All feeds with a device, in the order of the plan.</summary>
    /// <param name="book">The racks.</param>
    /// <param name="strips">The strips in them.</param>
    public static ImmutableArray<FeedLoad> Of(RackBook book, ImmutableArray<StripLoad> strips)
    {
        var ofFeed = strips.ToLookup(s => s.Feed);
        return
        [
            .. from feed in book.Plan.Power
               let own = ofFeed[feed].Where(s => !s.Plugs.IsEmpty).ToList()
               where own.Count > 0
               select Of(book, feed, own.Count, [.. own.SelectMany(s => s.Plugs)]),
        ];
    }

    private static FeedLoad Of(RackBook book, PowerFeed feed, int strips, ImmutableArray<StripPlug> plugs)
    {
        FeedDraw Draw(Func<StripPlug, Watts> drawn) => new(
            Watts.From(plugs.Sum(p => drawn(p).Value)), StripLoads.Currents(plugs, drawn, feed, book.Plan.Policy));
        var whole = Draw(p => p.Drawn);
        var losses = plugs.SelectMany(p => p.Use.Feeds).Distinct().Where(f => f != feed)
            .Select(f => (Feed: f, After: Draw(p => p.DrawnWithout(f)))).ToList();
        if (losses.Count == 0) return new FeedLoad(feed, strips, whole, null, whole);
        var (lost, after) = losses.MaxBy(l => l.After.Watts);
        return new FeedLoad(feed, strips, whole, lost, after);
    }
}
