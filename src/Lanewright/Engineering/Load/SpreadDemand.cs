using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>Senders that each spread their rate evenly over all receivers but themselves.</summary>
internal sealed class SpreadDemand
{
    private readonly int[] senders;

    /// <summary>What all members of a sender send to one member of another bundle, in Gb/s.</summary>
    private readonly double[] toEachMember;

    /// <summary>What all members of a sender send within their own bundle, in Gb/s.</summary>
    private readonly double[] withinBundle;

    /// <summary>Receiving members by node.</summary>
    private readonly int[] members;

    /// <summary>Works out the shares.</summary>
    public SpreadDemand(ImmutableArray<Terminal> from, ImmutableArray<Terminal> to)
    {
        members = new int[to.Length == 0 ? 0 : to.Max(t => t.Node) + 1];
        foreach (var receiver in to) members[receiver.Node] += receiver.Members;
        var all = members.Sum();
        senders = [.. from.Select(s => s.Node).Distinct().Order()];
        toEachMember = new double[senders.Length];
        withinBundle = new double[senders.Length];
        foreach (var sender in from)
        {
            var at = Array.BinarySearch(senders, sender.Node);
            var own = ReceivingMembers(sender.Node);
            // Members that also receive have one receiver less to choose from: themselves.
            var both = Math.Min(sender.Members, own);
            var rate = sender.Rate.Gigabits;
            var ofBoth = all > 1 ? rate * both / (all - 1) : 0;
            var ofOthers = all > 0 ? rate * (sender.Members - both) / all : 0;
            toEachMember[at] += ofBoth + ofOthers;
            withinBundle[at] += (ofBoth * Math.Max(0, own - 1)) + (ofOthers * own);
            TotalGigabits += (ofBoth * (all - 1)) + (ofOthers * all);
        }
    }

    /// <summary>All demand, in Gb/s.</summary>
    public double TotalGigabits { get; }

    /// <summary>Nodes that send, rising.</summary>
    public IEnumerable<int> Senders => senders;

    /// <summary>Nodes that receive, rising.</summary>
    public IEnumerable<int> Receivers => Enumerable.Range(0, members.Length).Where(node => members[node] > 0);

    /// <summary>What tells two nodes apart in this demand: equal answers mean that the demand treats them alike.</summary>
    public (double ToEachMember, double WithinBundle, int Members) RoleOf(int node)
    {
        var at = Array.BinarySearch(senders, node);
        return at < 0 ? (0, 0, ReceivingMembers(node)) : (toEachMember[at], withinBundle[at], ReceivingMembers(node));
    }

    /// <summary>What all members of a node send, in Gb/s.</summary>
    public double GigabitsFrom(int node)
    {
        var at = Array.BinarySearch(senders, node);
        return at < 0 ? 0 : (toEachMember[at] * (members.Sum() - ReceivingMembers(node))) + withinBundle[at];
    }

    /// <summary>Members of a node that receive.</summary>
    public int ReceivingMembers(int node) => node < members.Length ? members[node] : 0;

    /// <summary>Adds what each node sends to one node, in Gb/s, to a vector over the nodes.</summary>
    public void AddColumn(int to, Span<double> gigabitsByNode)
    {
        var receiving = ReceivingMembers(to);
        if (receiving == 0) return;
        for (var i = 0; i < senders.Length; i++)
            gigabitsByNode[senders[i]] += senders[i] == to ? withinBundle[i] : toEachMember[i] * receiving;
    }
}
