using Lanewright.Model.Places;

namespace Lanewright.Engineering.Choice;

/// <summary>What the routes that a link passes between halls are joined by, added up along all of them. A route is fibre plant of its own,
/// from panel to panel: where another follows, the cord in the hall between joins the last panel of the one to the first of the other,
/// and each of those has its mated pair counted already.</summary>
/// <param name="Connections">Mated pairs that the routes state.</param>
/// <param name="Unstated">Routes that state none, so that the policy decides for each.</param>
/// <param name="Splices">Splices.</param>
public readonly record struct RouteJoins(int Connections, int Unstated, int Splices)
{
    /// <summary>The joins of routes; null where none is passed.</summary>
    public static RouteJoins? Of(IReadOnlyCollection<HallRoute> routes) => routes.Count == 0
        ? null
        : new RouteJoins(routes.Sum(r => r.Connections ?? 0), routes.Count(r => r.Connections is null), routes.Sum(r => r.Splices));

    /// <summary>Mated pairs with those of routes that state none.</summary>
    /// <param name="usual">What a route has that states none.</param>
    public int ConnectionsWith(int usual) => Connections + (Unstated * usual);
}
