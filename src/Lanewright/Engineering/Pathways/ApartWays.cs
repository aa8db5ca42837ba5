using Lanewright.Model;

namespace Lanewright.Engineering.Pathways;

/// <summary>Pairs of links that are to go ways of their own, and the ways they get. What a cable is made of plays no part in it, so this is
/// known before cables are chosen.</summary>
public sealed class ApartWays
{
    private readonly Plan plan;
    private readonly ShortestWays shortest;
    private readonly DisjointSearch search;
    private readonly Dictionary<CableKey, CableWay> ways = [];
    private readonly List<ApartPair> pairs = [];
    private readonly Dictionary<(int, int, int, int, int), (CableWay? One, CableWay? Other, bool IsProven)> known = [];
    private readonly HashSet<(int, int)> told = [];
    private readonly WaySearch around;
    private readonly TwoSideSearch twoSides;

    private ApartWays(Plan plan, ShortestWays shortest)
    {
        this.plan = plan;
        this.shortest = shortest;
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
    public static ApartWays Of(Plan plan, ShortestWays shortest) => new(plan, shortest);

    private void Lead(int device, int one, int other)
    {
        var rack = plan.Devices.RackIndex(device);
        var (a, b) = (FarRack(one, device), FarRack(other, device));
        // Inside a rack nothing is laid; a link has no way apart from itself.
        if (rack < 0 || a < 0 || b < 0 || a == rack || b == rack || one == other) return;
        if (!told.Add((Math.Min(one, other), Math.Max(one, other)))) return;
        var (ofOne, ofOther) = (Known(one, rack, a), Known(other, rack, b));
        var isProven = false;
        if (ofOne is null && ofOther is null) (ofOne, ofOther, isProven) = Together(rack, (a, SideOf(one)), (b, SideOf(other)));
        else if (ofOne is null && ofOther is { } second) ofOne = Around(second, rack, a, SideOf(one));
        else if (ofOther is null && ofOne is { } first) ofOther = Around(first, rack, b, SideOf(other));
        if (ofOne is null || ofOther is null) return;
        ways[new CableKey(CableKind.Cable, one)] = ofOne;
        ways[new CableKey(CableKind.Cable, other)] = ofOther;
        pairs.Add(ApartPair.Of(shortest.Net, one, other, rack, (ofOne, ofOther), isProven));
    }

    /// <summary>The way of a link that has one already: from another pair, or because it lies there; null where it is open.</summary>
    private CableWay? Known(int link, int rack, int far)
    {
        if (ways.TryGetValue(new CableKey(CableKind.Cable, link), out var way)) return way;
        return plan.Statements[plan.Links.Statement(link)].IsExisting
            ? shortest.Between(WayQuestion.Between(rack, far, SideOf(link)))
            : null;
    }

    private int SideOf(int link) => Math.Max(0, shortest.Net.SideOf(plan.Statements[plan.Links.Statement(link)].Side));

    /// <summary>Two ways looked for together; for links of two sides first one after the other in both orders, which mostly will
    /// do.</summary>
    private (CableWay? One, CableWay? Other, bool IsProven) Together(int rack, (int Far, int Side) one, (int Far, int Side) other)
    {
        if (known.TryGetValue((rack, one.Far, other.Far, one.Side, other.Side), out var found)) return found;
        if (one.Side == other.Side)
        {
            var both = search.Find(rack, one.Far, other.Far, one.Side);
            found = (both?.One, both?.Other, true);
        }
        else
        {
            found = OfTwoSides(rack, one, other);
        }
        return known[(rack, one.Far, other.Far, one.Side, other.Side)] = found;
    }

    private (CableWay? One, CableWay? Other, bool IsProven) OfTwoSides(int rack, (int Far, int Side) one, (int Far, int Side) other)
    {
        var (first, turned) = (OneByOne(rack, one, other), OneByOne(rack, other, one));
        var least = Math.Min(Common(first), Common(turned));
        var (best, then) = Common(first) <= least ? first : (turned.Then, turned.First);
        if (least is 0 or double.PositiveInfinity) return (best, then, false);
        var (ways, isProven) = twoSides.Find(
            WayQuestion.Between(rack, one.Far, one.Side), WayQuestion.Between(rack, other.Far, other.Side));
        return ways is { } apart ? (apart.One, apart.Other, false) : (best, then, isProven);
    }

    private (CableWay? First, CableWay? Then) OneByOne(int rack, (int Far, int Side) first, (int Far, int Side) then)
    {
        var way = shortest.Between(WayQuestion.Between(rack, first.Far, first.Side));
        return (way, way is null ? null : Around(way, rack, then.Far, then.Side));
    }

    private double Common((CableWay? First, CableWay? Then) ways) => ways is { First: { } one, Then: { } other }
        ? one.Closing(shortest.Net).Intersect(other.Closing(shortest.Net)).Count()
        : double.PositiveInfinity;

    /// <summary>The shortest way that avoids the stretches and the route of another; where there is none, the shortest.</summary>
    private CableWay? Around(CableWay other, int rack, int far, int side)
    {
        var question = WayQuestion.Between(rack, far, side);
        var closed = new bool[shortest.Net.Closable];
        foreach (var taken in other.Closing(shortest.Net)) closed[taken] = true;
        return around.Past(question, what => closed[what]) ?? shortest.Between(question);
    }

    private int FarRack(int link, int device)
    {
        var statement = plan.Statements[plan.Links.Statement(link)];
        // Links through panels are cords at both ends; the trunks between are laid by themselves, and ways are held against one another
        // when all is laid.
        if (!statement.Through.IsEmpty) return -1;
        var (from, to) = (plan.Links.FromDevice(link), plan.Links.ToDevice(link));
        return plan.Devices.RackIndex(from == device ? to : from);
    }
}
