using System.Collections.Immutable;
using Lanewright.Model.Places;

namespace Lanewright.Engineering.Pathways;

/// <summary>Two links that a plan wants on ways without a stretch in common.</summary>
/// <param name="One">One link.</param>
/// <param name="Other">The other.</param>
/// <param name="Rack">The rack both begin at.</param>
/// <param name="Shared">Stretches that both lie in; none when they are apart.</param>
/// <param name="Crossings">Points away from their racks that both pass.</param>
public sealed record ApartPair(int One, int Other, int Rack, ImmutableArray<int> Shared, ImmutableArray<int> Crossings)
{
    /// <summary>The route between halls that both go through, where it has no cross-section and so is no stretch; null when there is
    /// none.</summary>
    public HallRoute? Route { get; private init; }

    /// <summary>Whether it is certain that no two ways apart are there: both were looked for together, and of links of one side what they
    /// have in common is in every way.</summary>
    public bool IsProven { get; private init; }

    /// <summary>Whether they have something in common.</summary>
    public bool IsTogether => !Shared.IsEmpty || Route is not null;

    /// <summary>Whether one of them goes through panels, so that trunks and cords are laid each by itself, and held against one another
    /// when all is laid.</summary>
    public bool IsPatched { get; private init; }

    /// <summary>What two ways have in common.</summary>
    internal static ApartPair Of(WayNet net, int one, int other, int rack, (CableWay One, CableWay Other) ways, bool isProven) =>
        Of(net, one, other, rack, [ways.One], [ways.Other]) with { IsProven = isProven };

    /// <summary>The same of two links of which one goes through panels, each with the ways of its cords and trunks.</summary>
    internal static ApartPair Patched(WayNet net, (int One, int Other) links, int rack, CableWay[] one, CableWay[] other) =>
        Of(net, links.One, links.Other, rack, one, other) with { IsPatched = true };

    private static ApartPair Of(WayNet net, int one, int other, int rack, CableWay[] ofOne, CableWay[] ofOther)
    {
        ImmutableArray<int> shared = [.. Stretches(ofOne).Intersect(Stretches(ofOther)).Order()];
        var route = shared.IsEmpty ? Routes(ofOne).Intersect(Routes(ofOther)).FirstOrDefault() : null;
        ImmutableArray<int> crossings = shared.IsEmpty && route is null
            ? [.. Inner(net, ofOne).Intersect(Inner(net, ofOther)).Order()]
            : [];
        return new ApartPair(one, other, rack, shared, crossings) { Route = route };
    }

    private static IEnumerable<int> Stretches(CableWay[] ways) => ways.SelectMany(w => w.Stretches);

    private static IEnumerable<HallRoute> Routes(CableWay[] ways) => ways.SelectMany(w => w.Routes);

    private static IEnumerable<int> Inner(WayNet net, CableWay[] ways) => ways.SelectMany(w => Inner(net, w));

    /// <summary>The same links on ways they were moved to since.</summary>
    internal ApartPair On(WayNet net, CableWay one, CableWay other) => Of(net, One, Other, Rack, (one, other), isProven: false);

    /// <summary>Points a way passes, but for where it comes down at its racks.</summary>
    private static IEnumerable<int> Inner(WayNet net, CableWay way)
    {
        for (var i = 1; i < way.Stretches.Length; i++)
        {
            var (before, after) = (net.Stretches[way.Stretches[i - 1]], net.Stretches[way.Stretches[i]]);
            foreach (var point in new[] { before.A, before.B })
                if (point == after.A || point == after.B) yield return point;
        }
    }
}
