using System.Collections.Immutable;
using System.Text.Json;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Tests.Load.Support;

/// <summary>Lets the engine answer the cases of the table, function by function.</summary>
internal static class FabricCases
{
    public static Dictionary<string, double> Answer(string function, JsonElement inputs) => function switch
    {
        "util_fat_tree_all_to_all" or "util_fat_tree_all_to_all_formula" => AllToAll(Whole(inputs, "k")),
        "fat_tree_fail" => FatTreeFailure(inputs),
        "leaf_spine_degraded" => LeafSpineDegraded(inputs),
        "k_link_failures" => LinkFailures(Whole(inputs, "L"), Whole(inputs, "S"), Whole(inputs, "k")),
        "hose_leaf_spine" => Hose(KnownFabric.LeafSpine(Whole(inputs, "L"), Whole(inputs, "S"), Whole(inputs, "D")), Lost(inputs)),
        "hose_fat_tree" => Hose(KnownFabric.FatTree(Whole(inputs, "k")), FatTreeLoss(Whole(inputs, "k"), Text(inputs, "fail"))),
        "incast" => Incast(inputs),
        "bisection_fat_tree" => Bisected(KnownFabric.FatTree(Whole(inputs, "k"))),
        "spine_availability" => new()
        {
            ["probability"] = Availability.AtLeast(Whole(inputs, "S"), Whole(inputs, "need"), Share.From(Number(inputs, "p_up"))).Value,
        },
        "hash_collisions" => Collisions(Whole(inputs, "flows"), Whole(inputs, "links")),
        "throughput_lp" => FabricFacts.Throughput(inputs),
        _ => FabricFacts.Answer(function, inputs),
    };

    public static int Whole(JsonElement inputs, string name) => inputs.GetProperty(name).GetInt32();

    public static double Number(JsonElement inputs, string name) => inputs.GetProperty(name).GetDouble();

    public static string Text(JsonElement inputs, string name) =>
        inputs.TryGetProperty(name, out var text) ? text.GetString() ?? "" : "";

    private static Dictionary<string, double> AllToAll(int k)
    {
        var fabric = KnownFabric.FatTree(k);
        var loads = LoadSolver.OnShortestPaths(fabric.Graph, fabric.AllToAll, SplitRule.PerHop);
        double Fullest(int tier) => Enumerable.Range(0, fabric.Graph.Links.Length)
            .Where(l => fabric.Graph.Nodes[fabric.Graph.Links[l].A].Kind == tier)
            .Max(l => loads.Utilisation(l).Value);
        return new() { ["edge_agg"] = Fullest(1), ["agg_core"] = Fullest(2) };
    }

    private static Dictionary<string, double> FatTreeFailure(JsonElement inputs)
    {
        var fabric = KnownFabric.FatTree(Whole(inputs, "k"));
        var rule = Text(inputs, "mode") == "hop" ? SplitRule.PerHop : SplitRule.PathWeighted;
        var halfway = TrafficMatrix.Shift(fabric.Terminals, (int)fabric.Hosts / 2);
        var hurt = fabric.Graph.Without(FatTreeLoss(Whole(inputs, "k"), Text(inputs, "which")));
        return new() { ["max_util"] = FullestInside(LoadSolver.OnShortestPaths(hurt, halfway, rule)) };
    }

    private static Outage FatTreeLoss(int k, string which) => which switch
    {
        "edge_agg" => Outage.OfLink(0),
        "agg_core" => Outage.OfLink(k / 2 * (k / 2)),
        _ => Outage.None,
    };

    private static Dictionary<string, double> LeafSpineDegraded(JsonElement inputs)
    {
        var parallel = inputs.TryGetProperty("m", out var m) ? m.GetInt32() : 1;
        var fabric = KnownFabric.LeafSpine(Whole(inputs, "L"), Whole(inputs, "S"), Whole(inputs, "D"), parallel);
        var traffic = Text(inputs, "traffic") == "shift" ? TrafficMatrix.Shift(fabric.Terminals, 1) : fabric.AllToAll;
        var loads = LoadSolver.OnShortestPaths(fabric.Graph.Without(Lost(inputs)), traffic, SplitRule.PerHop);
        return new() { ["max_util"] = FullestInside(loads) };
    }

    private static Outage Lost(JsonElement inputs)
    {
        var spines = Whole(inputs, "S");
        var outage = Outage.None;
        if (inputs.TryGetProperty("failed", out var links))
            foreach (var pair in links.EnumerateArray())
                outage = outage.With(Outage.OfLink((pair[0].GetInt32() * spines) + pair[1].GetInt32()));
        if (inputs.TryGetProperty("failed_spines", out var whole))
            foreach (var spine in whole.EnumerateArray())
                outage = outage.With(Outage.OfNode(Whole(inputs, "L") + spine.GetInt32()));
        return outage;
    }

    /// <summary>Every set of k lost links, every pair of leaves: a pair alone, sending as much as its leaf has uplinks, fills what is
    /// left to the inverse of the share it keeps.</summary>
    private static Dictionary<string, double> LinkFailures(int leaves, int spines, int lost)
    {
        var fabric = KnownFabric.LeafSpine(leaves, spines, spines);
        var (sets, cutting, sum, worst) = (0, 0, 0.0, 1.0);
        foreach (var set in Subsets(leaves * spines, lost))
        {
            sets++;
            var hurt = fabric.Graph.Without(set.Aggregate(Outage.None, (outage, link) => outage.With(Outage.OfLink(link))));
            var cuts = false;
            for (var a = 0; a < leaves; a++)
            {
                for (var b = a + 1; b < leaves; b++)
                {
                    var pair = TrafficMatrix.Of([new Flow(leaves + spines + a, leaves + spines + b, fabric.Terminals[a].Rate)]);
                    var loads = LoadSolver.OnShortestPaths(hurt, pair, SplitRule.PerHop);
                    var share = loads.UnroutedGigabits > 0 ? 0 : 1 / FullestInside(loads);
                    sum += share;
                    worst = Math.Min(worst, share);
                    cuts |= share == 0;
                }
            }
            cutting += cuts ? 1 : 0;
        }
        var mean = sum / sets / (leaves * (leaves - 1) / 2.0);
        Assert.Equal(mean, UnequalSpread.MeanPairShare(leaves, spines, lost).Value, 1e-12);
        return new()
        {
            ["sets"] = sets, ["worst_pair_share"] = worst, ["mean_pair_share"] = mean, ["sets_cutting_a_pair"] = cutting,
            ["worst_leaf_share"] = UnequalSpread.WorstLeafShare(spines, lost).Value,
        };
    }

    private static IEnumerable<ImmutableArray<int>> Subsets(int of, int size, int from = 0)
    {
        if (size == 0) yield return [];
        else
            for (var first = from; first < of; first++)
                foreach (var rest in Subsets(of, size - 1, first + 1)) yield return [first, .. rest];
    }

    private static Dictionary<string, double> Hose(KnownFabric fabric, Outage outage)
    {
        var worst = HoseWorstCase.Of(fabric.Graph.Without(outage), fabric.Terminals, SplitRule.PerHop);
        Assert.True(worst.IsExact);
        return new() { ["worst_util"] = worst.Worst?.Utilisation.Value ?? 0 };
    }

    private static Dictionary<string, double> Incast(JsonElement inputs)
    {
        var queue = IncastQueue.Of(
            Whole(inputs, "senders"), BitRate.FromGigabits(Number(inputs, "sender_rate")),
            BitRate.FromGigabits(Number(inputs, "receiver_rate")), Number(inputs, "burst_bytes"));
        return new() { ["overload"] = queue.Overload.Value, ["queue_bytes"] = queue.QueueBytes };
    }

    private static Dictionary<string, double> Bisected(KnownFabric fabric)
    {
        var found = Bisection.Of(fabric.Graph, fabric.Terminals);
        Assert.True(found.IsExact);
        return new() { ["per_direction"] = found.AtMost.Gigabits };
    }

    private static Dictionary<string, double> Collisions(int flows, int links)
    {
        var found = HashCollisions.Of(flows, links);
        return new()
        {
            ["p_no_collision"] = found.NoCollision.Value, ["expected_busy_links"] = found.BusyLinks,
            ["expected_max_flows_on_a_link"] = found.BusiestFlows, ["expected_flows_sharing"] = found.SharingFlows,
            ["line_rate_throughput"] = found.Throughput.Value,
        };
    }

    /// <summary>The fullest link between switches.</summary>
    private static double FullestInside(LinkLoads loads) => Enumerable.Range(0, loads.Graph.Links.Length)
        .Where(l => !loads.Graph.Nodes[loads.Graph.Links[l].A].IsTerminal && !loads.Graph.Nodes[loads.Graph.Links[l].B].IsTerminal)
        .Max(l => loads.Utilisation(l).Value);
}
