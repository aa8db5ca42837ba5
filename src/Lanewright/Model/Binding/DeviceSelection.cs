using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Devices;
using Lanewright.Notation;
using Lanewright.Quantities;

namespace Lanewright.Model.Binding;

/// <summary>Finds the devices a side of links names: groups, single devices, and runs such as <c>edge-1..4</c>.</summary>
internal sealed class DeviceSelection(PlanTree tree, DeviceTable devices, FindingSink findings)
{
    private const string To = "..";

    private readonly Lazy<Dictionary<string, int>> deviceByName = new(() => NamesOf(devices));
    private readonly Lazy<ImmutableArray<string>> beginningsInDoubt = new(() => BeginningsInDoubt(tree, devices));

    /// <summary>The devices in the order named, and their groups; a name that nothing has is reported. None at all where a name belongs
    /// to a group that could not be made, which has been reported where it stands.</summary>
    public (ImmutableArray<int> Devices, ImmutableArray<DeviceGroup> Groups) Of(ImmutableArray<ScalarNode> names)
    {
        var chosen = ImmutableArray.CreateBuilder<int>();
        foreach (var name in names)
        {
            if (Find(name.Value) is { } found)
            {
                for (var i = 0; i < found.Count; i++) chosen.Add(found.First + i);
                continue;
            }
            if (IsInDoubt(name.Value)) return ([], []);
            var known = devices.Groups.Select(g => g.Name);
            Names.Require<DeviceGroup>(null, "group or device", name.Value, known, name.Span, findings);
        }
        return (chosen.ToImmutable(), GroupsOf(chosen));
    }

    /// <summary>The groups of devices, each once, in the order of their first devices.</summary>
    private ImmutableArray<DeviceGroup> GroupsOf(IReadOnlyList<int> chosen)
    {
        var (groups, seen) = (ImmutableArray.CreateBuilder<DeviceGroup>(), new HashSet<int>());
        var last = -1;
        foreach (var device in chosen)
        {
            var group = devices.Group(device);
            if (group.Index == last) continue;
            last = group.Index;
            if (seen.Add(last)) groups.Add(group);
        }
        return groups.ToImmutable();
    }

    private bool IsInDoubt(string name) =>
        beginningsInDoubt.Value.Any(b => name.StartsWith(b, StringComparison.Ordinal)) || tree.Describes("devices", name);

    /// <summary>What names of devices begin with whose group is described and not to be relied on.</summary>
    private static ImmutableArray<string> BeginningsInDoubt(PlanTree tree, DeviceTable devices)
    {
        var sound = devices.Groups.Where(g => !g.IsFaulty).Select(g => g.Name).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. from entry in tree.Entries("devices")
               where !sound.Contains(entry.Name)
               select (entry.Map.Text("name") ?? entry.Name + "-{n}").Split('{')[0] into beginning
               where beginning.Length > 0
               select beginning,
        ];
    }

    private static Dictionary<string, int> NamesOf(DeviceTable devices)
    {
        var names = new Dictionary<string, int>(devices.Count, StringComparer.Ordinal);
        for (var i = 0; i < devices.Count; i++) names.TryAdd(devices.Name(i), i);
        return names;
    }

    private (int First, int Count)? Find(string name)
    {
        if (devices.Groups.FirstOrDefault(g => g.Name == name) is { } group) return (group.First, group.Count);
        if (deviceByName.Value.TryGetValue(name, out var device)) return (device, 1);
        return Run(name);
    }

    /// <summary>A run names its first device and the number of its last; both are of one group, in its order.</summary>
    private (int First, int Count)? Run(string name)
    {
        var dots = name.LastIndexOf(To, StringComparison.Ordinal);
        if (dots < 0 || !Numerals.TryWhole(name.AsSpan(dots + To.Length), out var last) || last < 0) return null;
        var first = name[..dots];
        var stem = first.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        if (stem.Length == first.Length) return null;
        if (!deviceByName.Value.TryGetValue(first, out var from)) return null;
        if (!deviceByName.Value.TryGetValue(stem + Numerals.Padded(last, first.Length - stem.Length), out var to)) return null;
        return to >= from && devices.Group(from) == devices.Group(to) ? (from, to - from + 1) : null;
    }
}
