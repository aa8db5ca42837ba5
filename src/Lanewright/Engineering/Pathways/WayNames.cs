using Lanewright.Model.Places;

namespace Lanewright.Engineering.Pathways;

/// <summary>What a way through further halls passes, by name: its pathways and, so that it can be followed from hall to hall, every route
/// between, whether it has a cross-section or not.</summary>
internal static class WayNames
{
    /// <summary>The names in order from the rack where the way is written from.</summary>
    /// <param name="net">The graph.</param>
    /// <param name="way">The way.</param>
    /// <param name="hall">The hall of that rack.</param>
    public static IEnumerable<string> Of(WayNet net, CableWay way, Hall hall)
    {
        var passed = 0;
        foreach (var pathway in way.Stretches.Select(s => net.Stretches[s].Pathway))
        {
            // A route that is a pathway names itself.
            while (passed < way.Routes.Length && (pathway.Route is { } own ? own != way.Routes[passed] : pathway.Hall.Index != hall.Index))
                yield return Pass();
            yield return pathway.Route is null || passed == way.Routes.Length ? pathway.FullName : Pass();
        }
        while (passed < way.Routes.Length) yield return Pass();

        string Pass()
        {
            var route = way.Routes[passed++];
            hall = route.From.Index == hall.Index ? route.To : route.From;
            return route.Name;
        }
    }
}
