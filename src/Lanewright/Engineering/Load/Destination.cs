using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>Where shortest paths are reckoned to in one pass: one bundle of hosts, or all bundles that hang on the same switch by one
/// link.</summary>
/// <param name="Terminals">The bundles.</param>
/// <param name="Arcs">The arcs that leave the (first) bundle: their targets are the switches at which paths arrive.</param>
internal sealed record Destination(ImmutableArray<int> Terminals, Range Arcs)
{
    /// <summary>Whether each of the bundles has one link only.</summary>
    public bool HasOneLink => Arcs.End.Value == Arcs.Start.Value + 1;

    /// <summary>Groups bundles into destinations, in the order of the switch they hang on, so that neighbours share a block. Bundles
    /// without a switch are left out.</summary>
    public static Destination[] Of(FabricArcs arcs, IEnumerable<int> terminals)
    {
        var single = new SortedDictionary<int, List<int>>();
        List<(int Place, Destination Destination)> result = [];
        foreach (var terminal in terminals)
        {
            var own = arcs.First[terminal]..arcs.First[terminal + 1];
            if (own.Start.Value == own.End.Value) continue;
            var place = arcs.Target[own.Start.Value];
            if (own.End.Value > own.Start.Value + 1)
                result.Add((place, new Destination([terminal], own)));
            else if (single.TryGetValue(place, out var group))
                group.Add(terminal);
            else
                single[place] = [terminal];
        }
        result.AddRange(single.Select(s => (s.Key, new Destination([.. s.Value], arcs.First[s.Value[0]]..arcs.First[s.Value[0] + 1]))));
        return [.. result.OrderBy(r => r.Place).ThenBy(r => r.Destination.Terminals[0]).Select(r => r.Destination)];
    }

    /// <summary>Physical links of the bundle to one of its switches.</summary>
    public int CountTo(int target, FabricArcs arcs)
    {
        var count = 0;
        for (var arc = Arcs.Start.Value; arc < Arcs.End.Value; arc++)
            if (arcs.Target[arc] == target) count += arcs.Count[arc];
        return count;
    }
}
