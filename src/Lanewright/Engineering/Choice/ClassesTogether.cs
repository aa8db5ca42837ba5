using System.Collections.Immutable;
using Lanewright.Model;

namespace Lanewright.Engineering.Choice;

/// <summary>Finds classes whose links share split cages.</summary>
internal static class ClassesTogether
{
    /// <summary>The sets of classes to choose together, in the order of their first classes.</summary>
    public static IEnumerable<ImmutableArray<int>> Of(Plan plan, LinkClasses classes)
    {
        var parent = Enumerable.Range(0, classes.All.Length).ToArray();
        var firstOfBundle = new int[classes.Bundles.Count];
        Array.Fill(firstOfBundle, -1);
        for (var link = 0; link < plan.Links.Count; link++)
        {
            var bundle = classes.Bundles.BundleOf(link);
            if (bundle < 0) continue;
            var own = classes.ClassOf[link];
            if (firstOfBundle[bundle] < 0) firstOfBundle[bundle] = own;
            else Join(parent, firstOfBundle[bundle], own);
        }
        return Enumerable.Range(0, parent.Length)
            .GroupBy(i => Root(parent, i))
            .OrderBy(g => g.First())
            .Select(g => g.ToImmutableArray());
    }

    private static void Join(int[] parent, int left, int right)
    {
        var a = Root(parent, left);
        var b = Root(parent, right);
        if (a != b) parent[Math.Max(a, b)] = Math.Min(a, b);
    }

    private static int Root(int[] parent, int of)
    {
        while (parent[of] != of) of = parent[of] = parent[parent[of]];
        return of;
    }
}
