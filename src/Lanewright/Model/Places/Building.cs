using System.Collections.Immutable;

namespace Lanewright.Model.Places;

/// <summary>All places of a plan.</summary>
/// <param name="Halls">Halls in natural order.</param>
/// <param name="Racks">Racks, hall by hall and row by row.</param>
/// <param name="Routes">Ways between halls.</param>
public sealed record Building(ImmutableArray<Hall> Halls, ImmutableArray<Rack> Racks, ImmutableArray<HallRoute> Routes)
{
    /// <summary>Racks by the path of their row, <c>hall/row</c> and <c>site/hall/row</c>: a large plan has thousands of rows and names each
    /// several times.</summary>
    public ILookup<string, Rack> RacksByRow { get; } = Racks
        .SelectMany(r => new[] { $"{r.Hall.Name}/{r.Row}", $"{r.Hall.Site}/{r.Hall.Name}/{r.Row}" }, (rack, path) => (rack, path))
        .ToLookup(r => r.path, r => r.rack, StringComparer.Ordinal);

    /// <summary>Trays, risers and ducts, hall by hall in natural order of their names, then routes that have a cross-section; a hall
    /// without any has cables everywhere overhead.</summary>
    public ImmutableArray<Pathway> Pathways { get; init; } = [];

    /// <summary>Sites in natural order of their names.</summary>
    public ImmutableArray<Site> Sites { get; init; } = [];

    /// <summary>Whether there are more routes that could not be read.</summary>
    public bool HasFaultyRoutes { get; init; }

    /// <summary>All ways between two halls, whichever end they are written from.</summary>
    public IEnumerable<HallRoute> RoutesBetween(Hall from, Hall to) =>
        Routes.Where(r => Joins(r, from, to));

    /// <summary>The first way between two halls, whichever end it is written from; null when there is none.</summary>
    public HallRoute? RouteBetween(Hall from, Hall to)
    {
        // Asked for each link between halls: no list is made.
        foreach (var route in Routes)
            if (Joins(route, from, to)) return route;
        return null;
    }

    /// <summary>Whether routes lead from a hall to another, however many one after the other.</summary>
    /// <param name="from">The hall.</param>
    /// <param name="to">The other.</param>
    /// <param name="isOpen">Which routes may be taken; null for all.</param>
    public bool AreJoined(Hall from, Hall to, Predicate<HallRoute>? isOpen = null)
    {
        var (seen, open) = (new HashSet<int> { from.Index }, new Stack<Hall>([from]));
        while (open.TryPop(out var hall))
        {
            if (hall == to) return true;
            foreach (var route in Routes)
            {
                if ((route.From != hall && route.To != hall) || isOpen?.Invoke(route) == false) continue;
                var next = route.From == hall ? route.To : route.From;
                if (seen.Add(next.Index)) open.Push(next);
            }
        }
        return false;
    }

    /// <summary>Whether a route joins two halls.</summary>
    public static bool Joins(HallRoute route, Hall from, Hall to) =>
        (route.From == from && route.To == to) || (route.From == to && route.To == from);
}
