using System.Collections.Immutable;
using System.Text.Json;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Tests.Fabrics.Support;

/// <summary>Asks our counts what a case asks, and gives the figures under the names the case has for them.</summary>
internal static class SizingCases
{
    public static Dictionary<string, double[]> Answer(string function, JsonElement inputs) => function switch
    {
        "fat_tree_graph" => SwitchGraph(FabricCounts.FoldedClos(Whole(inputs, "k"), 3)),
        "fat_tree" or "clos_levels" => Clos(
            FabricCounts.FoldedClos(Whole(inputs, "k"), inputs.TryGetProperty("levels", out var levels) ? levels.GetInt32() : 3)),
        "three_tier" => ThreeTier(inputs),
        "leaf_split" => Split(FabricCounts.Split(Whole(inputs, "radix"), RatioOf(inputs))),
        "leaf_split_speeds" => Split(FabricCounts.Split(
            Whole(inputs, "lanes"), Whole(inputs, "down_lanes"), Whole(inputs, "up_lanes"), RatioOf(inputs))),
        "two_tier_max" => TwoTier(FabricCounts.TwoTierMost(
            Whole(inputs, "leaf_radix"), Whole(inputs, "spine_radix"), RatioOf(inputs), Whole(inputs, "parallel"))),
        "two_tier_for" => TwoTier(FabricCounts.TwoTierFor(
            Whole(inputs, "hosts"), Whole(inputs, "leaf_radix"), Whole(inputs, "spine_radix"), RatioOf(inputs))),
        "xgft" => Tree(FabricCounts.Tree(Wholes(inputs, "m"), Wholes(inputs, "w"))),
        "breakout" => Breakout(FabricCounts.Breakout(
            Whole(inputs, "lanes"), Rate(inputs, "lane_g"), Rate(inputs, "port_g"))),
        "chassis" => Chassis(FabricCounts.Chassis(Whole(inputs, "chip_radix"), Whole(inputs, "front_ports"))),
        "clos3_crosspoints" => new()
        {
            ["crossbar"] = [OtherFabrics.CrossbarCrosspoints(Whole(inputs, "n_total"))],
            ["three_stage"] = [OtherFabrics.ThreeStageCrosspoints(Whole(inputs, "n_total"))],
        },
        "rail" => Rails(FabricCounts.Rails(
            Whole(inputs, "k"), Whole(inputs, "accel_per_server"), inputs.TryGetProperty("tiers", out var tiers) ? tiers.GetInt32() : 2)),
        "planes" => Planes(FabricCounts.Planes(
            Whole(inputs, "hosts"), Whole(inputs, "host_ports"), Whole(inputs, "k"), Ratio.One)),
        _ => Other(function, inputs),
    };

    private static Dictionary<string, double[]> Other(string function, JsonElement inputs)
    {
        switch (function)
        {
            case "rack_tree":
                var tree = OtherFabrics.RackTree(Whole(inputs, "d_a"), Whole(inputs, "d_i"), hostsPerRack: 20);
                return new()
                {
                    ["servers"] = [tree.Hosts],
                    ["intermediate"] = [tree.Intermediate],
                    ["aggregation"] = [tree.Aggregation],
                    ["tors"] = [tree.Racks],
                    ["layer_capacity_links"] = [tree.TopLinks],
                };
            case "groups":
                var groups = OtherFabrics.Groups(Whole(inputs, "p"), Whole(inputs, "a"), Whole(inputs, "h"));
                return new()
                {
                    ["groups"] = [groups.Groups],
                    ["routers"] = [groups.Switches],
                    ["hosts"] = [groups.Hosts],
                    ["radix"] = [groups.Radix],
                };
            case "diameter_two":
                var two = OtherFabrics.DiameterTwo(Whole(inputs, "q"));
                return new()
                {
                    ["network_radix"] = [two.LinksPerSwitch],
                    ["routers"] = [two.Switches],
                    ["p"] = [two.HostsPerSwitch],
                    ["hosts"] = [two.Hosts],
                    ["moore_bound"] = [OtherFabrics.MostSwitches(two.LinksPerSwitch, 2)],
                };
            case "random_graph":
                var random = OtherFabrics.Random(Whole(inputs, "n"), Whole(inputs, "k"), Whole(inputs, "r"));
                return new()
                {
                    ["hosts"] = [random.Hosts],
                    ["switch_links"] = [random.SwitchLinks],
                    ["mean_distance_bound"] = [random.LeastMeanDistance],
                    ["throughput_bound"] = [random.MostThroughput],
                };
            case "most_switches":
                return new() { ["nodes"] = [OtherFabrics.MostSwitches(Whole(inputs, "degree"), Whole(inputs, "diameter"))] };
            default:
                throw new InvalidOperationException($"no counts for {function}");
        }
    }

    private static Dictionary<string, double[]> Clos(FoldedClos clos) => new()
    {
        ["hosts"] = [clos.Hosts],
        ["switches"] = [clos.AllSwitches],
        ["edge"] = [clos.Switches[0]],
        ["agg"] = [clos.Switches[1]],
        ["core"] = [clos.Switches[^1]],
        ["pods"] = [clos.Pods],
        ["paths_between_pods"] = [clos.Paths],
        ["links"] = [clos.Links],
        ["fabric_links"] = [clos.FabricLinks],
        ["fabric_optic_ends_per_host"] = [clos.OpticEndsPerHost.Value],
    };

    /// <summary>The graph of switches alone, without hosts and their links.</summary>
    private static Dictionary<string, double[]> SwitchGraph(FoldedClos clos) => new()
    {
        ["nodes"] = [clos.AllSwitches],
        ["links"] = [clos.FabricLinks],
        ["diameter"] = [clos.Diameter],
    };

    private static Dictionary<string, double[]> ThreeTier(JsonElement inputs)
    {
        var ratios = new[] { "r1", "r2" }
            .Select(r => inputs.TryGetProperty(r, out var ratio) ? new Ratio(ratio[0].GetInt64(), ratio[1].GetInt64()) : Ratio.One);
        var clos = FabricCounts.FoldedClos(Whole(inputs, "leaf_radix"), 3, [.. ratios]);
        return new()
        {
            ["hosts"] = [clos.Hosts],
            ["hosts_per_pod"] = [clos.HostsPerPod],
            ["pods"] = [clos.Pods],
            // Aggregation switches of a pod, and so sets of cores that never meet.
            ["planes"] = [(double)clos.Switches[1] / clos.Pods],
            ["cores"] = [clos.Switches[2]],
            ["leaves"] = [clos.Switches[0]],
            ["aggs"] = [clos.Switches[1]],
            ["oversub_end_to_end"] = [clos.EndToEnd.Value],
        };
    }

    private static Dictionary<string, double[]> Split(LeafSplit split) =>
        new() { ["down"] = [split.Down], ["up"] = [split.Up], ["unused"] = [split.Unused] };

    private static Dictionary<string, double[]> TwoTier(TwoTierCounts? counts) => counts is null ? [] : new()
    {
        ["leaves"] = [counts.Leaves],
        ["spines"] = [counts.Spines],
        ["down"] = [counts.Down],
        ["up"] = [counts.Up],
        ["parallel"] = [counts.Parallel],
        ["hosts"] = [counts.Hosts],
        ["links"] = [counts.FabricLinks],
    };

    private static Dictionary<string, double[]> Tree(TreeCounts tree) => new()
    {
        ["nodes_per_level"] = [.. tree.Nodes.Select(n => (double)n)],
        ["links_per_level"] = [.. tree.Links.Select(n => (double)n)],
    };

    private static Dictionary<string, double[]> Breakout(BreakoutCounts counts) =>
        new() { ["ports"] = [counts.Ports], ["throughput_g"] = [counts.Throughput.Gigabits] };

    private static Dictionary<string, double[]> Chassis(ChassisCounts counts) => new()
    {
        ["front_per_line_chip"] = [counts.FrontPerLineChip],
        ["line_chips"] = [counts.LineChips],
        ["fabric_chips"] = [counts.FabricChips],
        ["chips"] = [counts.Chips],
        ["max_front_ports"] = [counts.MostFrontPorts],
    };

    private static Dictionary<string, double[]> Rails(RailCounts rails) => new()
    {
        ["servers"] = [rails.Servers],
        ["accelerators"] = [rails.Accelerators],
        ["accel_per_unit"] = [rails.AcceleratorsPerUnit],
        ["leaves_per_unit"] = [rails.LeavesPerUnit],
        ["units"] = [rails.Units],
        ["leaves"] = [rails.Leaves],
        ["spines"] = [rails.Spines],
        ["switches"] = [rails.Leaves + rails.Spines],
    };

    private static Dictionary<string, double[]> Planes(PlaneCounts? planes) => planes is null ? new() { ["fits"] = [0] } : new()
    {
        ["fits"] = [1],
        ["leaves_per_plane"] = [planes.Plane.Leaves],
        ["spines_per_plane"] = [planes.Plane.Spines],
        ["switches"] = [planes.Switches],
        ["host_cables"] = [planes.HostCables],
        ["fabric_links"] = [planes.FabricLinks],
    };

    private static int Whole(JsonElement inputs, string name) => inputs.GetProperty(name).GetInt32();

    private static ImmutableArray<int> Wholes(JsonElement inputs, string name) =>
        [.. inputs.GetProperty(name).EnumerateArray().Select(v => v.GetInt32())];

    private static BitRate Rate(JsonElement inputs, string name) => BitRate.FromGigabits(inputs.GetProperty(name).GetDouble());

    private static Ratio RatioOf(JsonElement inputs) => new(Whole(inputs, "num"), Whole(inputs, "den"));
}
