using System.Collections.Immutable;
using System.Security.Cryptography;

namespace Lanewright.Engineering.Load;

/// <summary>Everything that loads of a network depend on, told apart by its SHA-256 (FIPS 180-4): two states of a plan ask the same where
/// nodes, links, traffic, split and what may fail are the same, whatever things are called.</summary>
internal readonly record struct LoadQuestion
{
    private readonly string digest;

    private LoadQuestion(string digest) => this.digest = digest;

    /// <summary>What single failures do to traffic.</summary>
    public static LoadQuestion Of(FabricGraph graph, TrafficMatrix traffic, SplitRule rule, ImmutableArray<FailureUnit> units) =>
        Of(into =>
        {
            Write(into, graph, rule);
            Write(into, traffic);
            Write(into, units);
        });

    /// <summary>What any traffic between hosts may do.</summary>
    public static LoadQuestion Of(FabricGraph graph, ImmutableArray<Terminal> terminals, SplitRule rule) => Of(into =>
    {
        Write(into, graph, rule);
        foreach (var terminal in terminals)
        {
            into.Write(terminal.Node);
            into.Write(terminal.Members);
            into.Write(terminal.Rate.BitsPerSecond);
        }
    });

    private static LoadQuestion Of(Action<BinaryWriter> write)
    {
        using var stream = new MemoryStream();
        using var into = new BinaryWriter(stream);
        write(into);
        into.Flush();
        return new LoadQuestion(Convert.ToHexString(SHA256.HashData(stream.GetBuffer().AsSpan(0, (int)stream.Length))));
    }

    private static void Write(BinaryWriter into, FabricGraph graph, SplitRule rule)
    {
        into.Write((int)rule);
        into.Write(graph.HostLinkWidening);
        into.Write(graph.Nodes.Length);
        foreach (var node in graph.Nodes)
        {
            into.Write(node.Kind);
            into.Write(node.Members);
        }
        into.Write(graph.Links.Length);
        foreach (var link in graph.Links)
        {
            into.Write(link.A);
            into.Write(link.B);
            into.Write(link.Rate.BitsPerSecond);
            into.Write(link.Count);
        }
    }

    private static void Write(BinaryWriter into, TrafficMatrix traffic)
    {
        into.Write(traffic.Spreads.Length);
        foreach (var spread in traffic.Spreads)
        {
            foreach (var node in spread.Senders.Union(spread.Receivers).Order())
            {
                var (each, within, members) = spread.RoleOf(node);
                into.Write(node);
                into.Write(each);
                into.Write(within);
                into.Write(members);
            }
            into.Write(-1);
        }
        foreach (var (from, to, gigabits) in traffic.NamedFlows)
        {
            into.Write(from);
            into.Write(to);
            into.Write(gigabits);
        }
        into.Write(-1);
    }

    private static void Write(BinaryWriter into, ImmutableArray<FailureUnit> units)
    {
        foreach (var (_, kind, outage) in units)
        {
            into.Write((int)kind);
            into.Write(outage.Nodes.Length);
            foreach (var node in outage.Nodes) into.Write(node);
            into.Write(outage.Links.Length);
            foreach (var (link, count, first) in outage.Links)
            {
                into.Write(link);
                into.Write(count);
                into.Write(first);
            }
            into.Write(outage.Members.Length);
            foreach (var (node, first, count) in outage.Members)
            {
                into.Write(node);
                into.Write(first);
                into.Write(count);
            }
        }
    }
}
