using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;
using Lanewright.Model.Links;
using Lanewright.Notation;

namespace Lanewright.Model.Binding;

/// <summary>Reads which devices and cages one side of links is.</summary>
internal sealed class LinkEndBinder(PlanTree tree, Catalogue catalogue, DeviceTable devices, FindingSink findings)
{
    private readonly DeviceSelection selection = new(tree, devices, findings);

    /// <summary>Devices by the names that a key lists.</summary>
    public ImmutableArray<int> Devices(MapNode map, string key) => map[key] is null ? [] : selection.Of(map.Texts(key)).Devices;

    /// <summary>A side as a plan writes it; null where it names nothing, which has been reported.</summary>
    public LinkEnd? End(MapNode map, string key)
    {
        var node = map[key];
        var described = node as MapNode;
        var names = described is not null ? described.Texts("of") : map.Texts(key);
        var (chosen, groups) = selection.Of(names);
        if (chosen.IsEmpty) return null;
        var breakout = described?.Text("breakout") is { } text && PortMode.TryRead(text, out var mode) ? mode : default;
        return new LinkEnd
        {
            Devices = chosen,
            Groups = groups,
            Ports = described is null ? null : Ports(described, groups),
            Ways = breakout.Ways > 0 ? breakout.Ways : null,
            Module = described?.Text("module") is { } module
                ? Names.Item<ModuleModel>(catalogue, "module", module, described.SpanOf("module"), findings)
                : null,
            Fec = described?.Text("fec"),
            Autonegotiation = described?.Switch("autonegotiation"),
            UsesAdapter = described?.Switch("adapter") ?? false,
            Span = node?.Span ?? map.Span,
        };
    }

    /// <summary>Ports on cards have numbers of their own in each kind of device; one set names the same of all.</summary>
    private PortFilter? Ports(MapNode map, IReadOnlyList<DeviceGroup> groups)
    {
        if (map.Text("ports") is not { } text || !PortFilter.TryRead(text, out var filter)) return null;
        if (filter.Labels.IsEmpty) return filter;
        var found = new List<PortFilter>();
        foreach (var group in groups)
        {
            if (filter.For(group.Layout, out var missing) is { } own) found.Add(own);
            else
                findings.Add(ModelFindings.PortUnknown, map.SpanOf("ports"),
                    $"{group.Name} has no port {missing}: its ports are {PortsOf(group)}");
        }
        if (found.Exists(f => !f.Numbers.AsSpan().SequenceEqual(found[0].Numbers.AsSpan())))
        {
            findings.Add(ModelFindings.PortUnknown, map.SpanOf("ports"),
                $"'{text}' are other ports of {groups[0].Name} than of the rest; link them by sets of their own");
            return null;
        }
        return found.Count > 0 ? found[0] : null;
    }

    private static string PortsOf(DeviceGroup group) => group.Layout.Slots.Length == 0
        ? "none"
        : $"{group.Layout.Slots[0].Label} to {group.Layout.Slots[^1].Label}";
}
