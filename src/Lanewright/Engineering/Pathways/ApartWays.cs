using System.Collections.Immutable;
using Lanewright.Model;
using Lanewright.Model.Links;

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
    private readonly Dictionary<(int, int, int, int, int), (CableWay One, CableWay Other)?> known = [];
    private readonly HashSet<int> taken = [];

    private ApartWays(Plan plan, ShortestWays shortest)
    {
        this.plan = plan;
        this.shortest = shortest;
        search = new DisjointSearch(shortest.Net);
        foreach (var statement in plan.Statements)
            if (statement.ApartFrom is { } other) Pair(statement, plan.Statements[other]);
    }

    /// <summary>The way of each cable of a pair.</summary>
    public IReadOnlyDictionary<CableKey, CableWay> Ways => ways;

    /// <summary>The pairs, in the order of the sets that ask for them.</summary>
    public IReadOnlyList<ApartPair> Pairs => pairs;

    /// <summary>The ways of a plan.</summary>
    public static ApartWays Of(Plan plan, ShortestWays shortest) => new(plan, shortest);

    /// <summary>Links of both sets in turn are paired at each device that has some of both.</summary>
    private void Pair(LinkStatement own, LinkStatement other)
    {
        var (ownLinks, otherLinks) = (LinksOf(own), LinksOf(other));
        var byDevice = new SortedDictionary<int, (List<int> Own, List<int> Other)>();
        // Where a set names itself, the devices of its first end are meant; otherwise those that both sets have.
        if (own == other)
        {
            foreach (var group in ownLinks.GroupBy(plan.Links.FromDevice))
                byDevice[group.Key] = ([.. group.Where((_, i) => i % 2 == 0)], [.. group.Where((_, i) => i % 2 == 1)]);
        }
        else
        {
            var ends = otherLinks
                .SelectMany(l => new[] { plan.Links.FromDevice(l), plan.Links.ToDevice(l) }, (link, device) => (link, device))
                .ToLookup(e => e.device, e => e.link);
            foreach (var link in ownLinks)
            {
                foreach (var device in new[] { plan.Links.FromDevice(link), plan.Links.ToDevice(link) })
                {
                    if (!ends.Contains(device)) continue;
                    if (!byDevice.TryGetValue(device, out var lists)) byDevice[device] = lists = ([], [.. ends[device]]);
                    lists.Own.Add(link);
                }
            }
        }
        foreach (var (device, (ours, theirs)) in byDevice)
            for (var i = 0; i < Math.Min(ours.Count, theirs.Count); i++)
                if (!taken.Contains(ours[i]) && !taken.Contains(theirs[i])) Lead(device, ours[i], theirs[i], own, other);
    }

    private List<int> LinksOf(LinkStatement statement)
    {
        var links = new List<int>();
        for (var link = 0; link < plan.Links.Count; link++)
            if (plan.Links.Statement(link) == statement.Index) links.Add(link);
        return links;
    }

    private void Lead(int device, int one, int other, LinkStatement ofOne, LinkStatement ofOther)
    {
        var rack = plan.Devices.RackIndex(device);
        var (a, b) = (FarRack(one, device), FarRack(other, device));
        // Inside a rack nothing is laid.
        if (rack < 0 || a < 0 || b < 0 || a == rack || b == rack) return;
        var (sideOne, sideOther) = (Math.Max(0, shortest.Net.SideOf(ofOne.Side)), Math.Max(0, shortest.Net.SideOf(ofOther.Side)));
        if (!known.TryGetValue((rack, a, b, sideOne, sideOther), out var found))
        {
            found = sideOne == sideOther ? search.Find(rack, a, b, sideOne) : OnTheirSides(rack, a, b, sideOne, sideOther);
            known[(rack, a, b, sideOne, sideOther)] = found;
        }
        if (found is not { } both) return;
        taken.Add(one);
        taken.Add(other);
        ways[new CableKey(CableKind.Cable, one)] = both.One;
        ways[new CableKey(CableKind.Cable, other)] = both.Other;
        ImmutableArray<int> shared = [.. both.One.Stretches.Intersect(both.Other.Stretches).Order()];
        pairs.Add(new ApartPair(one, other, rack, shared, shared.IsEmpty ? Crossings(both.One, both.Other) : []));
    }

    /// <summary>Links of two sides have ways of their own but for pathways without a side, and those the second avoids where it
    /// can.</summary>
    private (CableWay, CableWay)? OnTheirSides(int rack, int a, int b, int sideOne, int sideOther)
    {
        if (shortest.Between(WayQuestion.Between(rack, a, sideOne)) is not { } one) return null;
        var question = WayQuestion.Between(rack, b, sideOther);
        var closed = new bool[shortest.Net.Stretches.Length];
        foreach (var stretch in one.Stretches) closed[stretch] = true;
        var own = new WaySearch(shortest.Net);
        own.From(question.From, shortest.Net.Building.Racks[question.To].Hall.Index, sideOther, closed);
        return (own.To(question.To) ?? shortest.Between(question)) is { } other ? (one, other) : null;
    }

    private int FarRack(int link, int device)
    {
        var statement = plan.Statements[plan.Links.Statement(link)];
        // Links through panels are cords at both ends; the trunks between are laid by themselves.
        if (!statement.Through.IsEmpty) return -1;
        var (from, to) = (plan.Links.FromDevice(link), plan.Links.ToDevice(link));
        return plan.Devices.RackIndex(from == device ? to : from);
    }

    /// <summary>Points both pass, but for where they come down at their racks.</summary>
    private ImmutableArray<int> Crossings(CableWay one, CableWay other) => [.. Inner(one).Intersect(Inner(other)).Order()];

    private IEnumerable<int> Inner(CableWay way)
    {
        var net = shortest.Net;
        for (var i = 1; i < way.Stretches.Length; i++)
        {
            var (before, after) = (net.Stretches[way.Stretches[i - 1]], net.Stretches[way.Stretches[i]]);
            foreach (var point in new[] { before.A, before.B })
                if (point == after.A || point == after.B) yield return point;
        }
    }
}
