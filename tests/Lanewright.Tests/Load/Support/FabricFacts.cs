using System.Text.Json;
using Lanewright.Engineering.Load;

namespace Lanewright.Tests.Load.Support;

/// <summary>Published facts about graphs, counted on the graphs that the other tests use.</summary>
internal static class FabricFacts
{
    public static Dictionary<string, double> Answer(string function, JsonElement inputs) => function switch
    {
        "dragonfly" => Dragonfly(inputs),
        "slimfly" => SlimFly(FabricCases.Whole(inputs, "q")),
        "graph_facts" => FatTreeFacts(inputs.GetProperty("args")[0].GetInt32()),
        "moore" => Moore(FabricCases.Whole(inputs, "degree"), FabricCases.Whole(inputs, "diameter")),
        "fat_tree" => FatTree(FabricCases.Whole(inputs, "k")),
        "jellyfish" => RandomRegular(FabricCases.Whole(inputs, "n"), FabricCases.Whole(inputs, "k"), FabricCases.Whole(inputs, "r")),
        _ => throw new InvalidOperationException($"no engine for {function}"),
    };

    public static Dictionary<string, double> Throughput(JsonElement inputs)
    {
        var args = inputs.GetProperty("args").EnumerateArray().Select(a => a.GetInt32()).ToArray();
        var rate = inputs.GetProperty("rate").GetInt32();
        var fabric = inputs.GetProperty("kind").GetString() switch
        {
            "leaf_spine" => KnownFabric.LeafSpine(args[0], args[1], rate),
            "slimfly" => KnownFabric.SlimFly(args[0], rate).WithWideAccess(rate),
            _ => KnownFabric.Dragonfly(args[0], args[1], args[2]).WithWideAccess(rate),
        };
        // Between the leaves of two tiers every pairing is as long as every other.
        var traffic = FabricCases.Text(inputs, "traffic") == "longest" ? TrafficMatrix.Shift(fabric.Terminals, 1) : fabric.AllToAll;
        var found = Engineering.Load.Throughput.Of(fabric.Graph, traffic) ?? throw new InvalidOperationException("there is demand");
        Assert.True(found.IsExact);
        Assert.Equal(found.AtMost.Value, found.AtLeast.Value, 1e-6);
        return new() { ["theta"] = found.AtLeast.Value };
    }

    private static Dictionary<string, double> Dragonfly(JsonElement inputs)
    {
        var (p, a, h) = (FabricCases.Whole(inputs, "p"), FabricCases.Whole(inputs, "a"), FabricCases.Whole(inputs, "h"));
        var fabric = KnownFabric.Dragonfly(p, a, h);
        return new()
        {
            ["groups"] = fabric.Switches / (double)a, ["routers"] = fabric.Switches, ["hosts"] = fabric.Hosts,
            ["radix"] = Degrees(fabric).Single(),
        };
    }

    private static Dictionary<string, double> SlimFly(int q)
    {
        var fabric = KnownFabric.SlimFly(q, 1);
        var radix = Degrees(fabric).Single() - 1;
        Assert.Equal(2, Diameter(fabric));
        return new()
        {
            ["network_radix"] = radix, ["routers"] = fabric.Switches, ["p"] = Math.Ceiling(radix / 2.0),
            ["hosts"] = fabric.Switches * Math.Ceiling(radix / 2.0), ["moore_bound"] = MooreBound(radix, 2),
        };
    }

    private static Dictionary<string, double> FatTreeFacts(int k)
    {
        var fabric = KnownFabric.FatTree(k);
        return new() { ["nodes"] = fabric.Switches, ["links"] = fabric.FabricLinks, ["diameter"] = Diameter(fabric) };
    }

    /// <summary>The bound, met by a graph: the ten pairs of five things, joined where they share none.</summary>
    private static Dictionary<string, double> Moore(int degree, int diameter)
    {
        var pairs = (from a in Enumerable.Range(0, 5) from b in Enumerable.Range(a + 1, 4 - a) select (a, b)).ToArray();
        var links = from i in Enumerable.Range(0, 10) from j in Enumerable.Range(i + 1, 9 - i)
                    where pairs[i].a != pairs[j].a && pairs[i].a != pairs[j].b && pairs[i].b != pairs[j].a && pairs[i].b != pairs[j].b
                    select (i, j, 1);
        var petersen = KnownFabric.Of(Enumerable.Repeat(1, 10), links, Enumerable.Range(0, 10).Select(s => (s, 1, 1)));
        Assert.Equal(degree + 1, Degrees(petersen).Single());
        Assert.Equal(diameter, Diameter(petersen));
        Assert.Equal(petersen.Switches, MooreBound(degree, diameter));
        return new() { ["nodes"] = MooreBound(degree, diameter) };
    }

    private static Dictionary<string, double> FatTree(int k) =>
        new() { ["hosts"] = KnownFabric.FatTree(k).Hosts, ["switches"] = KnownFabric.FatTree(k).Switches };

    /// <summary>Counts of a random regular graph, and bounds that no drawn graph may break.</summary>
    private static Dictionary<string, double> RandomRegular(int n, int k, int r)
    {
        var fabric = KnownFabric.RandomRegular(n, r, 1);
        // r at distance 1, the rest as near as a tree of that degree lets them be.
        var (left, layer, sum) = (n - 1, r, 0.0);
        for (var distance = 1; left > 0; distance++, layer *= r - 1)
        {
            sum += distance * (double)Math.Min(left, layer);
            left -= Math.Min(left, layer);
        }
        var meanBound = sum / (n - 1);
        var throughputBound = Math.Min(1, r / ((k - r) * meanBound));
        var mean = (HopCounts.Of(fabric.Graph)?.Mean ?? 0) - 2;
        Assert.True(mean >= meanBound);
        var scaled = Engineering.Load.Throughput.Of(fabric.Graph, fabric.AllToAll);
        Assert.True(scaled?.AtLeast.Value <= throughputBound + 1e-9);
        return new()
        {
            ["hosts"] = n * (k - r), ["switch_links"] = fabric.FabricLinks, ["mean_distance_bound"] = meanBound,
            ["throughput_bound"] = throughputBound,
        };
    }

    /// <summary>Between switches: the links at both ends lead to hosts.</summary>
    private static int Diameter(KnownFabric fabric) => (HopCounts.Of(fabric.Graph)?.Longest ?? 0) - 2;

    private static IEnumerable<int> Degrees(KnownFabric fabric)
    {
        var degrees = new int[fabric.Graph.Nodes.Length];
        foreach (var link in fabric.Graph.Links)
        {
            degrees[link.A] += link.Count;
            degrees[link.B] += link.Count;
        }
        return degrees.Where((_, node) => !fabric.Graph.Nodes[node].IsTerminal).Distinct();
    }

    private static double MooreBound(int degree, int diameter) =>
        1 + (degree * Enumerable.Range(0, diameter).Sum(i => Math.Pow(degree - 1, i)));
}
