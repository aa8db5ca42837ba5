using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;
using Lanewright.Model.Places;
using Lanewright.Model.Plant;
using Lanewright.Notation;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Turns the section <c>trunks</c> into trunks between panels.</summary>
internal sealed class TrunkBinder(
    PlanTree tree, Catalogue catalogue, StandardsLibrary standards, Building building, DeviceTable devices, FindingSink findings)
{
    private const string UsualType = "B";

    private readonly DeviceSelection selection = new(tree, devices, findings);

    /// <summary>The trunks in natural order of their names.</summary>
    public ImmutableArray<TrunkGroup> Bind()
    {
        var trunks = ImmutableArray.CreateBuilder<TrunkGroup>();
        foreach (var (name, map, span) in tree.Named("trunks", "the trunks"))
            if (Trunk(trunks.Count, name, map, span) is { } trunk) trunks.Add(trunk);
        return trunks.ToImmutable();
    }

    private TrunkGroup? Trunk(int index, string name, MapNode map, SourceSpan span)
    {
        var (from, to) = (Panel(map, "from"), Panel(map, "to"));
        var cable = map.Text("cable") is { } named
            ? Names.Item<CordModel>(catalogue, "array cable", named, map.SpanOf("cable"), findings)
            : null;
        var cassette = map.Text("cassette") is { } of
            ? Names.Item<SundryModel>(catalogue, "cassette", of, map.SpanOf("cassette"), findings)
            : null;
        if (from is not { } near || to is not { } far || cable is null || (map["cassette"] is not null && cassette is null)) return null;
        if (near == far)
        {
            findings.Add(ModelFindings.TrunkContradicts, map.SpanOf("to"), "a trunk ends in two panels; name another one");
            return null;
        }
        if (PositionsOf(cable) is not { } positions)
        {
            findings.Add(ModelFindings.TrunkContradicts, map.SpanOf("cable"),
                $"'{cable.Name}' is no array cable: a trunk has an array such as MPO-12 at both ends and no legs");
            return null;
        }
        if (cassette is { Front.Length: 0 })
        {
            findings.Add(ModelFindings.TrunkContradicts, map.SpanOf("cassette"),
                $"'{cassette.Name}' is no cassette; name one, or leave the key out");
            return null;
        }
        if (Contradicts(map, cassette is null)) return null;
        var method = cassette is null ? map.Text("type") ?? UsualType : map.Text("method") ?? (cable.PolishNear == "APC" ? "A" : "B");
        return new TrunkGroup
        {
            Index = index,
            Name = name,
            From = near,
            To = far,
            Count = map.Whole("count") ?? 1,
            Cable = cable,
            Positions = positions,
            Cassette = cassette,
            Method = method,
            Chain = Chain(method, cassette is null),
            Length = map.Length("length"),
            Splices = map.Whole("splices") ?? SplicesOfRoute(near, far),
            MeasuredLoss = map.Decibels("measured-loss"),
            IsExisting = map.Switch("existing") ?? false,
            Span = span,
        };
    }

    /// <summary>A trunk between halls has the splices that the route between them says.</summary>
    private int SplicesOfRoute(int near, int far) =>
        devices.Rack(near)?.Hall is { } from && devices.Rack(far)?.Hall is { } to && from != to
            ? building.RouteBetween(from, to)?.Splices ?? 0
            : 0;

    private bool Contradicts(MapNode map, bool isOpen)
    {
        var wrong = isOpen ? "method" : "type";
        if (map[wrong] is null) return false;
        findings.Add(ModelFindings.TrunkContradicts, map.SpanOf(wrong), isOpen
            ? "a method speaks of duplex ports; name a cassette, or write the type of the array cable"
            : "behind cassettes the method says how fibres go; write 'method' instead of 'type'");
        return true;
    }

    private int? Panel(MapNode map, string key)
    {
        if (map[key] is not ScalarNode named) return null;
        var (chosen, groups) = selection.Of([named]);
        if (groups.Any(g => g.IsFaulty)) return null;
        if (chosen.Length == 1 && devices.Group(chosen[0]).Model.Kind == DeviceKind.Panel) return chosen[0];
        if (chosen.Length > 0)
            findings.Add(ModelFindings.TrunkContradicts, named.Span, chosen.Length > 1
                ? $"'{named.Value}' are {chosen.Length} devices and a trunk ends in one; name one, such as {devices.Name(chosen[0])}"
                : $"'{named.Value}' is no panel: a trunk ends in a device whose model is of the kind panel");
        return null;
    }

    private int? PositionsOf(CordModel cable)
    {
        if (cable.Legs != 1 || cable.Near != cable.Far || cable.IsTwistedPair) return null;
        if (standards.Connector(cable.Near)?.Real("positions") is not { } positions) return null;
        return standards.Polarity.Positions.Contains((int)positions.Value) ? (int)positions.Value : null;
    }

    /// <summary>Duplex ports: the parts of the method. Open arrays: cords of the type that is bought everywhere, and at the far end one of
    /// the type that makes transmitters meet receivers.</summary>
    private ImmutableArray<ArrayPart> Chain(string method, bool isOpen)
    {
        var table = standards.Polarity;
        var (words, adapter) = isOpen ? ([UsualType, method, method == UsualType ? UsualType : "A"], "A") : table.MethodOf(method);
        return FibreChainReader.TryRead(words, [adapter], table, out var parts, out _) ? parts : [];
    }
}
