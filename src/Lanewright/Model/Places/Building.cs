using System.Collections.Immutable;

namespace Lanewright.Model.Places;

/// <summary>All places of a plan.</summary>
/// <param name="Halls">Halls in natural order.</param>
/// <param name="Racks">Racks, hall by hall and row by row.</param>
/// <param name="Routes">Ways between halls.</param>
public sealed record Building(ImmutableArray<Hall> Halls, ImmutableArray<Rack> Racks, ImmutableArray<HallRoute> Routes)
{
    /// <summary>Whether there are more routes that could not be read.</summary>
    public bool HasFaultyRoutes { get; init; }

    /// <summary>The way between two halls, whichever end it is written from; null when there is none.</summary>
    public HallRoute? RouteBetween(Hall from, Hall to)
    {
        foreach (var route in Routes)
            if ((route.From == from && route.To == to) || (route.From == to && route.To == from)) return route;
        return null;
    }
}
