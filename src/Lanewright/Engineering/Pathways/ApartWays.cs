using Lanewright.Engineering.Cabling;
using Lanewright.Model;

namespace Lanewright.Engineering.Pathways;

/// <summary>Pairs of links that are to go ways of their own, and the ways they get. What a cable is made of plays no part in it, so this is
/// known before cables are chosen.</summary>
public sealed class ApartWays
{
    private readonly Plan plan;
    private readonly RouteLength lengths;
    private readonly ShortestWays shortest;
    private readonly DisjointSearch search;
    private readonly Dictionary<CableKey, CableWay> ways = [];
    private readonly List<ApartPair> pairs = [];
    private readonly Dictionary<(int, WayQuestion, WayQuestion), (CableWay? One, CableWay? Other, bool IsProven)> known = [];
    private readonly HashSet<(int, int)> told = [];
    private readonly WaySearch around;
    private readonly TwoSideSearch twoSides;

    private ApartWays(Plan plan, RouteLength lengths, ShortestWays shortest)
    {
        (this.plan, this.lengths, this.shortest) = (plan, lengths, shortest);
        search = new DisjointSearch(shortest.Net);
        around = new WaySearch(shortest.Net);
        twoSides = new TwoSideSearch(shortest.Net);
        foreach (var (device, one, other) in ApartPairing.Of(plan)) Lead(device, one, other);
    }

    /// <summary>The way of each cable of a pair.</summary>
    public IReadOnlyDictionary<CableKey, CableWay> Ways => ways;

    /// <summary>The pairs, in the order of the sets that ask for them.</summary>
    public IReadOnlyList<ApartPair> Pairs => pairs;

    /// <summary>The ways of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="lengths">Asks for ways between devices.</param>
    /// <param name="shortest">The shortest ways, as <paramref name="lengths"/> has them.</param>
    public static ApartWays Of(Plan plan, RouteLength lengths, ShortestWays shortest) => new(plan, lengths, shortest);

    private void Lead(int device, int one, int other)
    {
        // A link has no way apart from itself.
        if (one == other || QuestionOf(one, device) is not { } first || QuestionOf(other, device) is not { } second) return;
        if (!told.Add((Math.Min(one, other), Math.Max(one, other)))) return;
        var rack = plan.Devices.RackIndex(device);
        var (ofOne, ofOther) = (Known(one, first), Known(other, second));
        var isProven = false;
        if (ofOne is null && ofOther is null) (ofOne, ofOther, isProven) = Together(rack, first, second);
        else if (ofOne is null && ofOther is { } theirs) ofOne = Around(theirs, first);
        else if (ofOther is null && ofOne is { } ours) ofOther = Around(ours, second);
        if (ofOne is null || ofOther is null) return;
        ways[new CableKey(CableKind.Cable, one)] = ofOne;
        ways[new CableKey(CableKind.Cable, other)] = ofOther;
        pairs.Add(ApartPair.Of(shortest.Net, one, other, rack, (ofOne, ofOther), isProven));
    }

    /// <summary>The way of a link that has one already: from another pair, or because it lies there; null where it is open.</summary>
    private CableWay? Known(int link, WayQuestion question)
    {
        if (ways.TryGetValue(new CableKey(CableKind.Cable, link), out var way)) return way;
        return plan.Statements[plan.Links.Statement(link)].IsExisting ? shortest.Between(question) : null;
    }

    /// <summary>Two ways looked for together; for links of two sides first one after the other in both orders, which mostly will
    /// do.</summary>
    private (CableWay? One, CableWay? Other, bool IsProven) Together(int rack, WayQuestion one, WayQuestion other)
    {
        if (known.TryGetValue((rack, one, other), out var found)) return found;
        if (one.Side == other.Side)
        {
            var both = search.Find(one.At(rack), one.Beyond(rack), other.Beyond(rack), one.Side);
            found = search.IsUndecided ? OfTwoSides(one, other) with { IsProven = false } : (both?.One, both?.Other, true);
        }
        else
        {
            found = OfTwoSides(one, other);
        }
        return known[(rack, one, other)] = found;
    }

    private (CableWay? One, CableWay? Other, bool IsProven) OfTwoSides(WayQuestion one, WayQuestion other)
    {
        var (first, turned) = (OneByOne(one, other), OneByOne(other, one));
        var least = Math.Min(Common(first), Common(turned));
        var (best, then) = Common(first) <= least ? first : (turned.Then, turned.First);
        if (least is 0 or double.PositiveInfinity) return (best, then, false);
        var (ways, isProven) = twoSides.Find(one, other);
        return ways is { } apart ? (apart.One, apart.Other, false) : (best, then, isProven);
    }

    private (CableWay? First, CableWay? Then) OneByOne(WayQuestion first, WayQuestion then)
    {
        var way = shortest.Between(first);
        return (way, way is null ? null : Around(way, then));
    }

    private double Common((CableWay? First, CableWay? Then) ways) => ways is { First: { } one, Then: { } other }
        ? one.Closing(shortest.Net).Intersect(other.Closing(shortest.Net)).Count()
        : double.PositiveInfinity;

    /// <summary>The shortest way that avoids the stretches and the route of another; where there is none, the shortest.</summary>
    private CableWay? Around(CableWay other, WayQuestion question)
    {
        var closed = new bool[shortest.Net.Closable];
        foreach (var taken in other.Closing(shortest.Net)) closed[taken] = true;
        return around.Past(question, what => closed[what]) ?? shortest.Between(question);
    }

    /// <summary>What is asked for a link; null inside a rack, where nothing is laid.</summary>
    private WayQuestion? QuestionOf(int link, int device)
    {
        var statement = plan.Statements[plan.Links.Statement(link)];
        // Links through panels are cords at both ends; the trunks between are laid by themselves, and ways are held against one another
        // when all is laid.
        if (!statement.Through.IsEmpty) return null;
        var (from, to) = (plan.Links.FromDevice(link), plan.Links.ToDevice(link));
        return lengths.QuestionOf(device, from == device ? to : from, statement.Side);
    }
}
