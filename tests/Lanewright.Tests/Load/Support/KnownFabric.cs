using System.Collections.Immutable;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Tests.Load.Support;

/// <summary>Fabrics whose properties are published. Links run at 1 Gb/s, so that a load in Gb/s is a utilisation.</summary>
internal sealed record KnownFabric(FabricGraph Graph, ImmutableArray<Terminal> Terminals)
{
    public static readonly BitRate Unit = BitRate.FromGigabits(1);

    public int Switches => Graph.Nodes.Count(n => !n.IsTerminal);

    public int FabricLinks => Graph.Links.Where(l => !Graph.Nodes[l.A].IsTerminal && !Graph.Nodes[l.B].IsTerminal).Sum(l => l.Count);

    public long Hosts => Terminals.Sum(t => (long)t.Members);

    public TrafficMatrix AllToAll => TrafficMatrix.AllToAll(Terminals);

    /// <summary>Three tiers of switches with k ports: k pods of k/2 edge and k/2 aggregation switches, k^2/4 cores, k/2 hosts an edge
    /// switch. Nodes: pod by pod edge then aggregation, cores, bundles in the order of the edge switches.</summary>
    public static KnownFabric FatTree(int k)
    {
        var h = k / 2;
        var cores = k * k;
        var links = new List<(int A, int B, int Count)>();
        for (var pod = 0; pod < k; pod++)
        {
            for (var edge = 0; edge < h; edge++)
                for (var agg = 0; agg < h; agg++) links.Add(((pod * k) + edge, (pod * k) + h + agg, 1));
            for (var agg = 0; agg < h; agg++)
                for (var core = 0; core < h; core++) links.Add(((pod * k) + h + agg, cores + (agg * h) + core, 1));
        }
        var kinds = Enumerable.Range(0, cores + (h * h)).Select(n => n >= cores ? 3 : n % k < h ? 1 : 2);
        return Of(kinds, links, Enumerable.Range(0, k * h).Select(e => (((e / h) * k) + (e % h), h, h)));
    }

    /// <summary>Leaves that each have so many parallel links to every spine and one host of so many Gb/s. Nodes: leaves, spines,
    /// hosts.</summary>
    public static KnownFabric LeafSpine(int leaves, int spines, int hostGigabits, int parallel = 1) => Of(
        Enumerable.Range(0, leaves + spines).Select(n => n < leaves ? 1 : 2),
        from leaf in Enumerable.Range(0, leaves) from spine in Enumerable.Range(0, spines) select (leaf, leaves + spine, parallel),
        Enumerable.Range(0, leaves).Select(l => (l, 1, hostGigabits)));

    /// <summary>The McKay-Miller-Siran graph of a prime q = 4w + 1 or 4w - 1, a bundle of hosts of so many Gb/s on each switch.</summary>
    public static KnownFabric SlimFly(int q, int hostGigabits)
    {
        var (even, odd) = SlimFlySets(q);
        var links = new List<(int A, int B, int Count)>();
        for (var x = 0; x < q; x++)
        {
            for (var y = 0; y < q; y++)
            {
                for (var z = y + 1; z < q; z++)
                {
                    if (even.Contains(z - y)) links.Add(((x * q) + y, (x * q) + z, 1));
                    if (odd.Contains(z - y)) links.Add(((q * q) + (x * q) + y, (q * q) + (x * q) + z, 1));
                }
                for (var m = 0; m < q; m++) links.Add(((x * q) + y, (q * q) + (m * q) + (((y - (m * x)) % q) + q) % q, 1));
            }
        }
        return Of(Enumerable.Repeat(1, 2 * q * q), links, Enumerable.Range(0, 2 * q * q).Select(r => (r, 1, hostGigabits)));
    }

    /// <summary>Groups of a switches, each with p hosts and h links to other groups, every two groups joined once: ah + 1
    /// groups.</summary>
    public static KnownFabric Dragonfly(int p, int a, int h)
    {
        var groups = (a * h) + 1;
        var links = new List<(int A, int B, int Count)>();
        for (var group = 0; group < groups; group++)
        {
            for (var i = 0; i < a; i++)
                for (var j = i + 1; j < a; j++) links.Add(((group * a) + i, (group * a) + j, 1));
            for (var other = group + 1; other < groups; other++)
                links.Add(((group * a) + ((other - group - 1) / h), (other * a) + ((groups - 1 - (other - group)) / h), 1));
        }
        return Of(Enumerable.Repeat(1, groups * a), links, Enumerable.Range(0, groups * a).Select(r => (r, p, p)));
    }

    /// <summary>A random graph in which every switch has r links, drawn by a seed; n*r even.</summary>
    public static KnownFabric RandomRegular(int n, int r, ulong seed)
    {
        var random = new Random((int)seed);
        for (; ; )
        {
            var stubs = Enumerable.Range(0, n * r).Select(i => i / r).ToArray();
            random.Shuffle(stubs);
            var pairs = stubs.Chunk(2).Select(p => (A: Math.Min(p[0], p[1]), B: Math.Max(p[0], p[1]))).ToList();
            // Pairs that do not fit are re-drawn among all; a plain restart would take for ever at higher degrees.
            for (var tries = 0; tries < 100 * n * r; tries++)
            {
                var bad = pairs.FindIndex(p => p.A == p.B || pairs.Count(o => o == p) > 1);
                if (bad < 0)
                    return Of(Enumerable.Repeat(1, n), pairs.Select(p => (p.A, p.B, 1)), Enumerable.Range(0, n).Select(s => (s, 1, 1)));
                var with = random.Next(pairs.Count);
                var (one, two) = (pairs[bad], pairs[with]);
                pairs[bad] = (Math.Min(one.A, two.A), Math.Max(one.A, two.A));
                pairs[with] = (Math.Min(one.B, two.B), Math.Max(one.B, two.B));
            }
        }
    }

    /// <summary>Switches of kinds, links of 1 Gb/s, and bundles (switch, members, total Gb/s) that each hang on one switch.</summary>
    public static KnownFabric Of(
        IEnumerable<int> kinds, IEnumerable<(int A, int B, int Count)> links, IEnumerable<(int Switch, int Members, int Gigabits)> hosts)
    {
        var nodes = kinds.Select(FabricNode.Switch).ToList();
        var all = links.Select(l => new FabricLink(l.A, l.B, Unit, l.Count)).ToList();
        var terminals = new List<Terminal>();
        foreach (var (at, members, gigabits) in hosts)
        {
            var rate = BitRate.FromGigabits(gigabits / (double)members);
            terminals.Add(new Terminal(nodes.Count, members, rate));
            all.Add(new FabricLink(nodes.Count, at, rate, members));
            nodes.Add(FabricNode.Hosts(0, members));
        }
        return new KnownFabric(new FabricGraph([.. nodes], [.. all]), [.. terminals]);
    }

    /// <summary>The same switches, one host each whose own link is never the bottleneck.</summary>
    public KnownFabric WithWideAccess(int gigabits)
    {
        var inside = Graph.Links.Where(l => !Graph.Nodes[l.A].IsTerminal && !Graph.Nodes[l.B].IsTerminal).Select(l => (l.A, l.B, l.Count));
        var kinds = Graph.Nodes.Where(n => !n.IsTerminal).Select(n => n.Kind);
        var wide = Of(kinds, inside, Enumerable.Range(0, Switches).Select(s => (s, 1, 1000)));
        return wide with { Terminals = [.. wide.Terminals.Select(t => t with { Rate = BitRate.FromGigabits(gigabits) })] };
    }

    private static (HashSet<int> Even, HashSet<int> Odd) SlimFlySets(int q)
    {
        var root = Enumerable.Range(2, q).First(g => Powers(g, q).Distinct().Count() == q - 1);
        var powers = Powers(root, q).ToArray();
        if (q % 4 == 1)
            return ([.. powers.Where((_, i) => i % 2 == 0)], [.. powers.Where((_, i) => i % 2 == 1)]);
        var w = (q + 1) / 4;
        var even = powers.Where((_, i) => i < (2 * w) - 1 ? i % 2 == 0 : i % 2 == 1);
        // The power q - 1 is the power 0 again.
        var odd = powers.Where((_, i) => i < 2 * w ? i % 2 == 1 : i % 2 == 0).Append(1);
        return ([.. even], [.. odd]);
    }

    private static IEnumerable<int> Powers(int g, int q)
    {
        var value = 1;
        for (var i = 0; i < q - 1; i++)
        {
            yield return value;
            value = value * g % q;
        }
    }
}
