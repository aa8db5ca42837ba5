using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>What is down at one moment: whole nodes, parallel links of links, members of bundles.</summary>
/// <param name="Nodes">Nodes that are down with all their links.</param>
/// <param name="Links">Physical links that are down.</param>
/// <param name="Members">Hosts that are down while others of their bundle are up.</param>
public sealed record Outage(ImmutableArray<int> Nodes, ImmutableArray<LinkOutage> Links, ImmutableArray<MemberOutage> Members)
{
    /// <summary>Nothing is down.</summary>
    public static Outage None { get; } = new([], [], []);

    /// <summary>Whether two outages take down the same, written in the same order.</summary>
    internal static IEqualityComparer<Outage> Alike { get; } = EqualityComparer<Outage>.Create(
        (one, two) => one is null || two is null
            ? one is null && two is null
            : one.Nodes.SequenceEqual(two.Nodes) && one.Links.SequenceEqual(two.Links) && one.Members.SequenceEqual(two.Members),
        outage => HashCode.Combine(
            outage.Nodes.FirstOrDefault(), outage.Links.FirstOrDefault(), outage.Members.FirstOrDefault(), outage.Links.Length));

    /// <summary>One node is down.</summary>
    public static Outage OfNode(int node) => new([node], [], []);

    /// <summary>So many parallel links of one link are down.</summary>
    public static Outage OfLink(int link, int count = 1, int first = 0) => new([], [new LinkOutage(link, count, first)], []);

    /// <summary>Both outages at once. What both name is down once.</summary>
    public Outage With(Outage other) =>
        new([.. Nodes.Union(other.Nodes)], Links.AddRange(other.Links), Members.AddRange(other.Members));
}
