using System.Collections.Immutable;
using System.Text.Json;
using Lanewright.Engineering.Lines.Routes;
using Lanewright.Quantities;

namespace Lanewright.Tests.Lines;

/// <summary>What the functions about routes named in the cases are in this program.</summary>
internal static class LineRouteFunctions
{
    public static double? Of(string function, JsonElement[] a)
    {
        double At(int i) => a[i].GetDouble();
        return function switch
        {
            "disjoint_pair[0]" or "disjoint_pair" => Pair(a[0], a[1].GetString()!, a[2].GetString()!)?.Cost,
            "parallel_avail" =>
                RouteAvailability.Either(Share.From(At(0)), Share.From(At(1)), Share.From(a.Length > 2 ? At(2) : 1)).Value,
            "downtime_min_per_year" => RouteAvailability.MinutesDown(Share.From(At(0))),
            "route_avail" => RouteAvailability.Of(Length.FromKilometres(At(0)), At(1), Duration.FromHours(At(2))).Value,
            _ => LineCodeFunctions.Of(function, a) ?? throw new InvalidOperationException($"no function {function} with {a.Length} inputs"),
        };
    }

    private static RoutePair? Pair(JsonElement edges, string from, string to)
    {
        var all = edges.EnumerateArray().Select(e => (A: e[0].GetString()!, B: e[1].GetString()!, Cost: e[2].GetDouble())).ToList();
        var names = all.SelectMany(e => new[] { e.A, e.B }).Distinct().ToList();
        var graph = new RouteGraph(names.Count,
            [.. all.Select(e => new RouteEdge(names.IndexOf(e.A), names.IndexOf(e.B), e.Cost, ImmutableArray<int>.Empty))]);
        var (pair, isProven) = graph.CheapestPair(names.IndexOf(from), names.IndexOf(to));
        Assert.True(isProven);
        return pair;
    }
}
