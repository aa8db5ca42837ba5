namespace Lanewright.Engineering.Load;

/// <summary>The directed links of a graph that are up, by the node they leave, in plain arrays for the passes that touch them
/// all.</summary>
internal sealed class FabricArcs
{
    /// <summary>Sorts the links of a graph by node.</summary>
    public FabricArcs(FabricGraph graph)
    {
        var nodes = graph.Nodes.AsSpan();
        var links = graph.Links.AsSpan();
        IsTerminal = new bool[nodes.Length];
        for (var i = 0; i < nodes.Length; i++) IsTerminal[i] = nodes[i].IsTerminal;
        First = new int[nodes.Length + 1];
        var direct = new List<int>();
        var isUp = new bool[links.Length];
        for (var i = 0; i < links.Length; i++)
        {
            ref readonly var link = ref links[i];
            if (link.Count == 0 || graph.IsDown(link.A) || graph.IsDown(link.B)) continue;
            if (IsTerminal[link.A] && IsTerminal[link.B])
            {
                direct.Add(i);
                continue;
            }
            isUp[i] = true;
            First[link.A + 1]++;
            First[link.B + 1]++;
        }
        for (var i = 0; i < nodes.Length; i++) First[i + 1] += First[i];
        DirectLinks = [.. direct];
        Target = new int[First[^1]];
        Count = new int[Target.Length];
        Side = new int[Target.Length];
        Reverse = new int[Target.Length];
        var next = First.AsSpan(0, nodes.Length).ToArray();
        for (var i = 0; i < links.Length; i++)
        {
            if (!isUp[i]) continue;
            ref readonly var link = ref links[i];
            var (forth, back) = (next[link.A]++, next[link.B]++);
            (Target[forth], Count[forth], Side[forth], Reverse[forth]) = (link.B, link.Count, i * 2, back);
            (Target[back], Count[back], Side[back], Reverse[back]) = (link.A, link.Count, (i * 2) + 1, forth);
        }
        for (var i = 0; i < nodes.Length; i++) MostArcs = Math.Max(MostArcs, First[i + 1] - First[i]);
    }

    /// <summary>Keeps some of the arcs of others.</summary>
    /// <param name="whole">The others.</param>
    /// <param name="first">Where the arcs of each node start.</param>
    /// <param name="kept">The new place of each arc; -1 where it goes.</param>
    /// <param name="times">How many times an arc counts that leads to a node.</param>
    public FabricArcs(FabricArcs whole, int[] first, int[] kept, int[] times)
    {
        IsTerminal = whole.IsTerminal;
        DirectLinks = whole.DirectLinks;
        MostArcs = whole.MostArcs;
        First = first;
        (Target, Count, Side, Reverse) = (new int[first[^1]], new int[first[^1]], new int[first[^1]], new int[first[^1]]);
        for (var arc = 0; arc < kept.Length; arc++)
        {
            if (kept[arc] < 0) continue;
            Target[kept[arc]] = whole.Target[arc];
            Count[kept[arc]] = whole.Count[arc] * times[whole.Target[arc]];
            Side[kept[arc]] = whole.Side[arc];
            Reverse[kept[arc]] = kept[whole.Reverse[arc]];
        }
    }

    /// <summary>Where the arcs of each node start; one entry more than nodes.</summary>
    public int[] First { get; }

    /// <summary>The node each arc leads to.</summary>
    public int[] Target { get; }

    /// <summary>Parallel physical links of each arc.</summary>
    public int[] Count { get; }

    /// <summary>The link of each arc, doubled, and one more when the arc runs from end B to end A.</summary>
    public int[] Side { get; }

    /// <summary>The arc that runs against each.</summary>
    public int[] Reverse { get; }

    /// <summary>The most arcs that leave one node.</summary>
    public int MostArcs { get; }

    /// <summary>Whether each node is a bundle of hosts.</summary>
    public bool[] IsTerminal { get; }

    /// <summary>Links that join two bundles of hosts without a switch; they carry only what the two send each other and are no
    /// arcs.</summary>
    public int[] DirectLinks { get; }

    /// <summary>Nodes there are.</summary>
    public int NodeCount => IsTerminal.Length;
}
