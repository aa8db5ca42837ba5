using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>Sorts the hosts of a network into bundles attached alike, and numbers switches and bundles.</summary>
internal sealed class HostBundles
{
    private readonly PlanNetwork network;
    private readonly Func<int, int> roleOf;
    private readonly List<ImmutableArray<int>.Builder> devices = [];
    private readonly Dictionary<string, int> kinds = new(StringComparer.Ordinal);

    private HostBundles(PlanNetwork network, Func<int, int> roleOf)
    {
        this.network = network;
        this.roleOf = roleOf;
        NodeOf = new int[network.Plan.Devices.Count];
        MemberOf = new int[NodeOf.Length];
        Array.Fill(NodeOf, -1);
        KindOf = [];
    }

    /// <summary>Node of each device; -1 outside the network.</summary>
    public int[] NodeOf { get; }

    /// <summary>Number of each host in its bundle.</summary>
    public int[] MemberOf { get; }

    /// <summary>Kind of each node: its model, as groups of one model may well be alike. What a demand makes of a bundle, its traffic
    /// tells.</summary>
    public List<int> KindOf { get; }

    /// <summary>Devices of each node.</summary>
    public ImmutableArray<ImmutableArray<int>> DevicesOf => [.. devices.Select(d => d.ToImmutable())];

    /// <summary>Sorts them: first the switches, then the bundles, each in the order of their first devices.</summary>
    public static HostBundles Of(PlanNetwork network, Func<int, int> roleOf)
    {
        var bundles = new HostBundles(network, roleOf);
        for (var device = 0; device < bundles.NodeOf.Length; device++)
            if (network.IsSwitch(device) && network.HasLinks(device)) bundles.Add(device);
        var byPlace = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var device = 0; device < bundles.NodeOf.Length; device++)
            if (!network.IsSwitch(device) && network.HasLinks(device)) bundles.AddHost(device, byPlace);
        return bundles;
    }

    private void AddHost(int host, Dictionary<string, int> byPlace)
    {
        if (network.UpLinks(host).Length != network.LinkCount(host))
        {
            // Linked to another host: nothing else is attached like it.
            Add(host);
            return;
        }
        var place = PlaceOf(host);
        if (!byPlace.TryGetValue(place, out var node))
        {
            byPlace[place] = Add(host);
            return;
        }
        NodeOf[host] = node;
        MemberOf[host] = devices[node].Count;
        devices[node].Add(host);
    }

    private int Add(int device)
    {
        var model = network.Plan.Devices.Group(device).Model.Name;
        if (!kinds.TryGetValue(model, out var kind)) kinds[model] = kind = kinds.Count;
        KindOf.Add(kind);
        NodeOf[device] = devices.Count;
        devices.Add(ImmutableArray.CreateBuilder<int>());
        devices[^1].Add(device);
        return NodeOf[device];
    }

    /// <summary>What has to be equal for two hosts to be alike, as text: group and role, rack, and each link's far device and
    /// rate.</summary>
    private string PlaceOf(int host)
    {
        var plan = network.Plan;
        var ends = new List<(int Far, long Rate)>();
        foreach (var link in network.UpLinks(host)) ends.Add((network.FarDevice(link, host), network.Statement(link).Rate.BitsPerSecond));
        ends.Sort();
        return string.Join(' ', ends.SelectMany(e => new[] { e.Far, e.Rate })
            .Prepend(plan.Devices.RackIndex(host)).Prepend(roleOf(host)).Prepend(plan.Devices.Group(host).Index));
    }
}
