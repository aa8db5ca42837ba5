using System.Collections.Immutable;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Links;

namespace Lanewright.Engineering.Load;

/// <summary>One network of a plan: which links belong to it, how far each device is from the hosts, and which links lead up.</summary>
public sealed class PlanNetwork
{
    private readonly bool[] contains;
    private readonly int[] tierOf;
    private readonly int[] linksOf;
    private readonly int[] onlyNear;
    private readonly int[] upStart;
    private readonly int[] upLinks;

    private PlanNetwork(Plan plan, string name, bool[] contains)
    {
        Plan = plan;
        Name = name;
        this.contains = contains;
        tierOf = DeviceTiers.Of(plan, contains);
        linksOf = new int[plan.Devices.Count];
        onlyNear = new int[plan.Devices.Count];
        Array.Fill(onlyNear, Unlinked);
        for (var link = 0; link < contains.Length; link++)
        {
            if (!contains[link]) continue;
            Note(plan.Links.FromDevice(link), plan.Links.ToDevice(link));
            Note(plan.Links.ToDevice(link), plan.Links.FromDevice(link));
        }
        upStart = new int[plan.Devices.Count + 1];
        for (var link = 0; link < contains.Length; link++)
            if (LowerEnd(link) is >= 0 and var device) upStart[device + 1]++;
        for (var i = 0; i < plan.Devices.Count; i++) upStart[i + 1] += upStart[i];
        upLinks = new int[upStart[^1]];
        var next = upStart.AsSpan(0, plan.Devices.Count).ToArray();
        for (var link = 0; link < contains.Length; link++)
            if (LowerEnd(link) is >= 0 and var device) upLinks[next[device]++] = link;
    }

    /// <summary>The plan.</summary>
    public Plan Plan { get; }

    /// <summary>Its name; empty for the main one.</summary>
    public string Name { get; }

    /// <summary>The networks of a plan: the main one first, then the others in natural order of their names.</summary>
    public static ImmutableArray<PlanNetwork> All(Plan plan)
    {
        var names = plan.Statements.Select(s => s.Network).Where(n => n.Length > 0).Distinct().Order(Text.NaturalOrder.Instance);
        return [.. names.Prepend("").Select(name => new PlanNetwork(plan, name, NetworkLinks.Of(plan, name)))];
    }

    /// <summary>Whether a link belongs to it.</summary>
    public bool Contains(int link) => contains[link];

    /// <summary>Links between a device and the hosts nearest to it: 0 for a host, 1 for a leaf; -1 where no host is reached.</summary>
    public int Tier(int device) => tierOf[device];

    /// <summary>How many links of the network a device has.</summary>
    public int LinkCount(int device) => linksOf[device];

    /// <summary>Whether a device has any link of the network.</summary>
    public bool HasLinks(int device) => linksOf[device] > 0;

    /// <summary>Links of a device to devices one tier further from the hosts, in order.</summary>
    public ReadOnlySpan<int> UpLinks(int device) => upLinks.AsSpan(upStart[device]..upStart[device + 1]);

    /// <summary>Whether a device forwards what others send.</summary>
    public bool IsSwitch(int device) => Plan.Devices.Group(device).Model.Kind is not (DeviceKind.Host or DeviceKind.Panel);

    /// <summary>The device at the other end of a link.</summary>
    public int FarDevice(int link, int device) =>
        Plan.Links.FromDevice(link) == device ? Plan.Links.ToDevice(link) : Plan.Links.FromDevice(link);

    /// <summary>The port of a device at its own end of a link.</summary>
    public PortPlace NearPort(int link, int device) =>
        Plan.Links.FromDevice(link) == device ? Plan.Links.FromPort(link) : Plan.Links.ToPort(link);

    /// <summary>The statement a link comes from.</summary>
    public LinkStatement Statement(int link) => Plan.Statements[Plan.Links.Statement(link)];

    private void Note(int device, int near)
    {
        linksOf[device]++;
        onlyNear[device] = onlyNear[device] == Unlinked || onlyNear[device] == near ? near : Several;
    }

    /// <summary>The end a link leads up from; a switch that is linked to one other alone is the end of a way and no tier above it. -1
    /// where both ends are equally far from the hosts, or no host is reached.</summary>
    private int LowerEnd(int link)
    {
        if (!contains[link]) return -1;
        var (from, to) = (Plan.Links.FromDevice(link), Plan.Links.ToDevice(link));
        if (tierOf[from] < 0 || tierOf[to] < 0) return -1;
        return tierOf[from] < tierOf[to] && IsAbove(to, from) ? from : tierOf[to] < tierOf[from] && IsAbove(from, to) ? to : -1;
    }

    private bool IsAbove(int upper, int lower) => onlyNear[upper] != lower || !IsSwitch(lower);

    private const int Unlinked = -1;
    private const int Several = -2;
}
