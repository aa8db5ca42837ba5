using System.Text;
using Lanewright.Engineering.Load;

namespace Lanewright.Tests.Load.Support;

/// <summary>Plans whose loads have closed forms. Hosts have one port of 200G, links between switches run at 400G.</summary>
internal static class LoadPlans
{
    /// <summary>Leaves that each have so many hosts and so many parallel links to every spine.</summary>
    public static string LeafSpine(int leaves, int spines, int hosts, string demands, int parallel = 1, string policy = "")
    {
        var text = new StringBuilder($"lanewright: 1\nname: leaf-spine\n{policy}\ndevices:\n");
        text.Append($"  leaf: {{ model: fixed-64x400, count: {leaves} }}\n  spine: {{ model: fixed-64x400, count: {spines} }}\n");
        text.Append($"  host: {{ model: server-2u, cards: nic-2x200, count: {leaves * hosts} }}\nlinks:\n");
        for (var leaf = 1; leaf <= leaves; leaf++)
            text.Append($"  edge-{leaf}: {{ from: host-{((leaf - 1) * hosts) + 1}..{leaf * hosts}, "
                + $"to: {{ of: leaf-{leaf}, breakout: 2x200G }}, pattern: each-to-each, rate: 200G, length: 2 m }}\n");
        text.Append($"  up: {{ from: leaf, to: spine, pattern: each-to-each, count: {parallel}, rate: 400G, length: 30 m }}\n");
        return text.Append(demands.Length > 0 ? "demands:\n" + demands : "").ToString();
    }

    /// <summary>Three tiers of switches with k ports in use, each edge switch with k/2 hosts on one port of 400G.</summary>
    public static string FatTree(int k, string demands)
    {
        var h = k / 2;
        var pods = Enumerable.Range(1, k).ToList();
        var text = new StringBuilder("lanewright: 1\nname: tree\ndevices:\n");
        foreach (var pod in pods)
            text.Append($"  edge-{pod}: {{ model: fixed-32x400, count: {h} }}\n  agg-{pod}: {{ model: fixed-32x400, count: {h} }}\n")
                .Append($"  host-{pod}: {{ model: server-2u, cards: nic-2x400, count: {h * h} }}\n");
        for (var core = 1; core <= h; core++) text.Append($"  core-{core}: {{ model: fixed-32x400, count: {h} }}\n");
        text.Append("links:\n");
        foreach (var pod in pods)
        {
            for (var edge = 1; edge <= h; edge++)
                text.Append($"  host-{pod}-{edge}: {{ from: host-{pod}-{((edge - 1) * h) + 1}..{edge * h}, to: edge-{pod}-{edge}, "
                    + "pattern: each-to-each, rate: 400G, length: 2 m }\n");
            text.Append($"  edge-{pod}: {{ from: edge-{pod}, to: agg-{pod}, pattern: each-to-each, rate: 400G, length: 20 m }}\n");
        }
        for (var core = 1; core <= h; core++)
            text.Append($"  core-{core}: {{ from: [{string.Join(", ", pods.Select(p => $"agg-{p}-{core}"))}], to: core-{core}, "
                + "pattern: each-to-each, rate: 400G, length: 60 m }\n");
        return text.Append(demands.Length > 0 ? "demands:\n" + demands : "").ToString();
    }

    /// <summary>All hosts of a fat tree by the names of their groups.</summary>
    public static string HostsOfTree(int k) => "[" + string.Join(", ", Enumerable.Range(1, k).Select(p => $"host-{p}")) + "]";

    /// <summary>The study of the first demand of a plan, which has to be free of errors but for those of its loads.</summary>
    public static DemandStudy Study(string plan)
    {
        var judged = PlanBlock.Compile(plan);
        Assert.DoesNotContain(judged.Findings, f => f.Severity == Findings.Severity.Error && f.Kind.Code is not ("LW3106" or "LW3107"));
        return Expect.Designed(judged).Load.Demands[0];
    }

    /// <summary>How full the fullest link is after the worst failure of a kind.</summary>
    public static double WorstAfter(DemandStudy study, FailureKind kind)
    {
        Assert.NotNull(study.Sweep);
        return study.Sweep.Classes.Where(c => c.Kind == kind).Max(c => c.MaxUtilisation.Value);
    }
}
