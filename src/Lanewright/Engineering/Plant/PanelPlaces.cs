using System.Collections.Immutable;
using Lanewright.Model;

namespace Lanewright.Engineering.Plant;

/// <summary>Chooses a mix of trunks for every group at the lowest price together, so that no panel has more ends than places.</summary>
internal sealed class PanelPlaces
{
    /// <summary>Steps of the search at most; what it found by then is answered with its bound.</summary>
    private const int MostSteps = 200_000;

    private readonly ImmutableArray<TrunkProposal> groups;
    private readonly decimal[] leastAfter;
    private readonly Dictionary<int, int> left;
    private readonly int[] pick;
    private int[]? best;
    private decimal bestPrice = decimal.MaxValue;
    private int steps;

    private PanelPlaces(Plan plan, ImmutableArray<TrunkProposal> groups)
    {
        this.groups = groups;
        pick = new int[groups.Length];
        leastAfter = new decimal[groups.Length + 1];
        for (var i = groups.Length - 1; i >= 0; i--) leastAfter[i] = leastAfter[i + 1] + groups[i].Frontier.Mixes[^1].Price.Hundredths;
        left = plan.Trunks.SelectMany(t => new[] { t.From, t.To }).Distinct()
            .ToDictionary(p => p, p => plan.Devices.Group(p).Model.Slots);
        foreach (var trunk in plan.Trunks.Where(t => t.IsExisting)) Take(trunk.From, trunk.To, trunk.Count);
    }

    /// <summary>The mixes in the order of the groups, none where the places do not suffice; whether they are proven the cheapest; and a
    /// price in hundredths that no choice goes below.</summary>
    public static (ImmutableArray<TrunkMix> Mixes, bool IsProven, decimal Bound) Cheapest(Plan plan, ImmutableArray<TrunkProposal> groups)
    {
        var bound = groups.Sum(g => g.Frontier.Bound);
        if (groups.Any(g => g.Frontier.Mixes.IsEmpty)) return ([], true, bound);
        var search = new PanelPlaces(plan, groups);
        search.Choose(0, 0);
        var isProven = search.steps < MostSteps;
        if (search.best is not { } found) return ([], isProven, bound);
        // A search that ran to its end found the least there is of these mixes.
        var isWhole = isProven && groups.All(g => g.Frontier.IsExact);
        return ([.. groups.Select((g, i) => g.Frontier.Mixes[found[i]])], isProven, isWhole ? search.bestPrice : bound);
    }

    /// <summary>The cheapest mixes of a group come first, so that what is found early cuts off much.</summary>
    private void Choose(int group, decimal price)
    {
        if (price + leastAfter[group] >= bestPrice || ++steps >= MostSteps) return;
        if (group == groups.Length)
        {
            (bestPrice, best) = (price, (int[])pick.Clone());
            return;
        }
        var (trunk, mixes) = (groups[group].Trunk, groups[group].Frontier.Mixes);
        for (var i = mixes.Length - 1; i >= 0; i--)
        {
            if (left[trunk.From] < mixes[i].Trunks || left[trunk.To] < mixes[i].Trunks) continue;
            pick[group] = i;
            Take(trunk.From, trunk.To, mixes[i].Trunks);
            Choose(group + 1, price + mixes[i].Price.Hundredths);
            Take(trunk.From, trunk.To, -mixes[i].Trunks);
        }
    }

    private void Take(int from, int to, int ends)
    {
        left[from] -= ends;
        left[to] -= ends;
    }
}
