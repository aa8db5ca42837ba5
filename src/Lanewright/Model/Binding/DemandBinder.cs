using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Demands;
using Lanewright.Model.Devices;
using Lanewright.Model.Links;
using Lanewright.Notation;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Turns demand sections into demands with their hosts resolved.</summary>
internal sealed class DemandBinder(
    PlanTree tree, DeviceTable devices, ImmutableArray<LinkStatement> statements, FindingSink findings)
{
    /// <summary>Every demand is studied with every failure; a plan with more is a slip.</summary>
    private const int MostDemands = 64;

    private readonly DeviceSelection selection = new(tree, devices, findings);

    /// <summary>Demands that could not be bound at all.</summary>
    public ImmutableArray<string> LeftOut { get; private set; } = [];

    /// <summary>Demands that were bound without a part of what they say.</summary>
    public ImmutableArray<string> InPart { get; private set; } = [];

    /// <summary>The demands that can be used, in natural order of their names.</summary>
    public ImmutableArray<Demand> Bind()
    {
        var demands = new List<(Demand Demand, MapNode Map)>();
        foreach (var (name, map, span) in tree.Named("demands", "the demand"))
        {
            if (demands.Count == MostDemands)
            {
                findings.Add(ModelFindings.PlanOutOfBounds, span, $"with '{name}' the plan has more than {MostDemands} demands");
                break;
            }
            if (Bind(demands.Count, name, map, span) is { } demand) demands.Add((demand, map));
            else LeftOut = LeftOut.Add(name);
        }
        ImmutableArray<Demand> bound =
            [.. demands.Select(d => d.Demand with { With = Others(d.Demand, d.Map, demands.Select(o => o.Demand)) })];
        InPart = [.. demands.Where(d => findings.HasErrorIn(d.Map.Span)).Select(d => d.Demand.Name)];
        return bound;
    }

    private Demand? Bind(int index, string name, MapNode map, SourceSpan span)
    {
        var kind = DemandLanguage.Kinds.FirstOrDefault(k => k.Name == (map.Text("kind") ?? "spread")).Kind;
        var isMutual = kind is DemandKind.AllToAll or DemandKind.Permutation or DemandKind.Hose;
        var isSound = isMutual
            ? Has(map, span, kind, "among") & HasNot(map, kind, "from") & HasNot(map, kind, "to")
            : Has(map, span, kind, "from") & Has(map, span, kind, "to") & HasNot(map, kind, "among");
        if (map.Rate("rate") is { BitsPerSecond: 0 } || !isSound) return null;
        var senders = Hosts(map, isMutual ? "among" : "from");
        var receivers = isMutual ? senders : Hosts(map, "to");
        if (senders.IsEmpty || receivers.IsEmpty) return null;
        if (kind == DemandKind.Incast && receivers.Length > 1)
            return Contradiction(map.SpanOf("to"), $"an incast goes from many to one, and 'to' names {receivers.Length} hosts; "
                + "name one of them, or make it a spread");
        if (receivers.Length == 1 && senders.All(receivers.Contains))
            return Contradiction(span,
                $"'{name}' has one host alone, {devices.Name(receivers[0])}, which sends nothing to itself; name another");
        return new Demand
        {
            Index = index,
            Name = name,
            Kind = kind,
            Senders = senders,
            Receivers = receivers,
            Rate = map.Rate("rate"),
            Flows = map.Whole("flows"),
            Network = Network(map),
            Span = span,
        };
    }

    private bool Has(MapNode map, SourceSpan span, DemandKind kind, string key)
    {
        if (!map.Texts(key).IsEmpty) return true;
        // A key whose value did not read has been reported where it stands.
        if (map[key] is null or ListNode { Items.IsEmpty: true })
            findings.Add(NotationFindings.KeyMissing, span, $"'{key}' is missing: {Article(kind)} needs it");
        return false;
    }

    private bool HasNot(MapNode map, DemandKind kind, string key)
    {
        if (map[key] is null) return true;
        Contradiction(map.SpanOf(key), $"{Article(kind)} has no '{key}'; leave it out, or choose another kind");
        return false;
    }

    private Demand? Contradiction(SourceSpan span, string message)
    {
        findings.Add(ModelFindings.DemandContradicts, span, message);
        return null;
    }

    private ImmutableArray<int> Hosts(MapNode map, string key)
    {
        var (chosen, groups) = selection.Of(map.Texts(key));
        foreach (var group in groups.Where(g => g.Model.Kind != DeviceKind.Host))
            Contradiction(map.SpanOf(key), $"'{group.Name}' is a switch, and traffic begins and ends at hosts; name the hosts behind it");
        return [.. chosen.Where(d => devices.Group(d).Model.Kind == DeviceKind.Host).Distinct()];
    }

    private string Network(MapNode map)
    {
        if (map.Text("network") is not { } name || name == DemandLanguage.MainNetwork) return "";
        if (statements.Any(s => s.Network == name)) return name;
        var known = statements.Select(s => s.Network).Where(n => n.Length > 0).Append(DemandLanguage.MainNetwork).Distinct();
        Names.Require<Demand>(null, "network", name, known, map.SpanOf("network"), findings);
        return "";
    }

    private ImmutableArray<string> Others(Demand demand, MapNode map, IEnumerable<Demand> all)
    {
        var others = ImmutableArray.CreateBuilder<string>();
        foreach (var text in map.Texts("with").DistinctBy(t => t.Value))
        {
            var other = all.FirstOrDefault(d => d.Name == text.Value);
            if (other is null && tree.Describes("demands", text.Value)) continue;
            if (Names.Require(other, "demand", text.Value, all.Select(d => d.Name), text.Span, findings) is null || other is null) continue;
            var fault = other.Index == demand.Index ? $"'{demand.Name}' runs at the same time as itself"
                : demand.Kind == DemandKind.Hose || other.Kind == DemandKind.Hose
                    ? "a hose stands for all traffic there can be, and nothing runs beside it"
                : other.Network != demand.Network ? $"'{other.Name}' runs on another network"
                : "";
            if (fault.Length > 0) Contradiction(text.Span, fault + "; take the name out");
            else others.Add(other.Name);
        }
        return others.ToImmutable();
    }

    private static string Article(DemandKind kind) => kind switch
    {
        DemandKind.Spread => "a spread",
        DemandKind.AllToAll => "an all-to-all",
        DemandKind.Permutation => "a permutation",
        DemandKind.Incast => "an incast",
        _ => "a hose",
    };
}
