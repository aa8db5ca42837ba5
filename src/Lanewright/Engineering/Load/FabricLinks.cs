using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>Puts the links of a network that run in parallel at one rate together.</summary>
/// <param name="Links">The links of the fabric, in the order of their first links of the plan.</param>
/// <param name="LinkOf">Fabric link of each link of the plan; -1 outside the network.</param>
/// <param name="FirstPlanLink">First link of the plan in each fabric link.</param>
internal sealed record FabricLinks(ImmutableArray<FabricLink> Links, int[] LinkOf, int[] FirstPlanLink)
{
    /// <summary>Puts them together.</summary>
    public static FabricLinks Of(PlanNetwork network, int[] nodeOf)
    {
        var plan = network.Plan;
        var linkOf = new int[plan.Links.Count];
        var byEnds = new Dictionary<(int A, int B, BitRate Rate), int>();
        var links = ImmutableArray.CreateBuilder<FabricLink>();
        var firsts = new List<int>();
        for (var link = 0; link < linkOf.Length; link++)
        {
            linkOf[link] = -1;
            if (!network.Contains(link)) continue;
            var (from, to) = (nodeOf[plan.Links.FromDevice(link)], nodeOf[plan.Links.ToDevice(link)]);
            var ends = (Math.Min(from, to), Math.Max(from, to), network.Statement(link).Rate);
            if (!byEnds.TryGetValue(ends, out var index))
            {
                byEnds[ends] = index = links.Count;
                links.Add(new FabricLink(ends.Item1, ends.Item2, ends.Rate, 0));
                firsts.Add(link);
            }
            links[index] = links[index] with { Count = links[index].Count + 1 };
            linkOf[link] = index;
        }
        return new FabricLinks(links.ToImmutable(), linkOf, [.. firsts]);
    }
}
