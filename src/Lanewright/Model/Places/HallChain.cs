using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Model.Places;

/// <summary>Routes one after the other from a hall to another, with the straight ways between their exits: how far it is where no pathway
/// leads the way.</summary>
/// <param name="Routes">The routes in their order.</param>
/// <param name="Across">Along and across the rows of all halls: from the first rack to an exit, through the halls passed, and to the other
/// rack.</param>
public sealed record HallChain(ImmutableArray<HallRoute> Routes, Length Across)
{
    /// <summary>How long its routes were surveyed.</summary>
    public Length Surveyed => Routes.Aggregate(default(Length), (sum, route) => sum + route.Length);

    /// <summary>A single route that joins the halls of two racks.</summary>
    public static HallChain Along(HallRoute route, Rack from, Rack to)
    {
        return new HallChain([route], ToExit(from) + ToExit(to));

        Length ToExit(Rack rack)
        {
            var (_, exit) = route.EndOf(route.To == rack.Hall);
            return Straight(rack.X, rack.Y, exit.X, exit.Y);
        }
    }

    /// <summary>The shortest chain between racks of two halls; null where none leads there. Of two as long the one found first in the order
    /// of the plan.</summary>
    public static HallChain? Between(Building building, Rack from, Rack to)
    {
        // An end of a route that is reached: number of the route, and whether it was gone along as it is written.
        var reached = new Dictionary<(int Route, bool IsOnward), (Length All, Length Across, (int Route, bool IsOnward)? Before)>();
        var open = new PriorityQueue<(int Route, bool IsOnward), double>();
        GoOn(from.Hall, from.X, from.Y, (default, default), null);
        var done = new HashSet<(int, bool)>();
        ((int, bool) Last, Length All, Length Across)? best = null;
        while (open.TryDequeue(out var at, out _))
        {
            if (!done.Add(at)) continue;
            var ((all, across, _), (hall, exit)) = (reached[at], building.Routes[at.Route].EndOf(at.IsOnward));
            if (hall != to.Hall)
            {
                GoOn(hall, exit.X, exit.Y, (all, across), at);
                continue;
            }
            var rest = Straight(exit.X, exit.Y, to.X, to.Y);
            if (best is null || all + rest < best.Value.All) best = (at, all + rest, across + rest);
        }
        return best is { } found ? new HallChain(Back(found.Last), found.Across) : null;

        void GoOn(Hall hall, Length x, Length y, (Length All, Length Across) so, (int Route, bool IsOnward)? before)
        {
            for (var i = 0; i < building.Routes.Length; i++)
                foreach (var isOnward in new[] { true, false })
                {
                    var (start, exit) = building.Routes[i].EndOf(!isOnward);
                    if (start != hall) continue;
                    var straight = Straight(x, y, exit.X, exit.Y);
                    var all = so.All + straight + building.Routes[i].Length;
                    if (reached.TryGetValue((i, isOnward), out var known) && known.All <= all) continue;
                    reached[(i, isOnward)] = (all, so.Across + straight, before);
                    open.Enqueue((i, isOnward), all.Metres);
                }
        }

        ImmutableArray<HallRoute> Back((int Route, bool IsOnward) last)
        {
            var routes = ImmutableArray.CreateBuilder<HallRoute>();
            for ((int Route, bool IsOnward)? at = last; at is { } end; at = reached[end].Before) routes.Add(building.Routes[end.Route]);
            routes.Reverse();
            return routes.ToImmutable();
        }
    }

    private static Length Straight(Length x, Length y, Length toX, Length toY) => (x - toX).Abs() + (y - toY).Abs();
}
