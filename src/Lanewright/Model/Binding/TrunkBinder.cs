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
        if (cassette is { Cassette: null })
        {
            findings.Add(ModelFindings.TrunkContradicts, map.SpanOf("cassette"),
                $"'{cassette.Name}' is no cassette; name one, or leave the key out");
            return null;
        }
        if (cable.Fibres is { } fibres && (fibres > positions || fibres % 2 != 0))
        {
            findings.Add(ModelFindings.TrunkContradicts, map.SpanOf("cable"),
                $"'{cable.Name}' has {fibres} fibres on {positions} positions; an array holds an even number of fibres and one a position");
            return null;
        }
        if (Ends(map, cassette) is not { } ends || Contradicts(map, ends == CassetteEnds.Both)) return null;
        var method = ends != CassetteEnds.Both ? map.Text("type") ?? UsualType
            : map.Text("method") ?? (cable.PolishNear == "APC" ? "A" : "B");
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
            CassetteEnds = ends,
            Method = method,
            Parts = Parts(method, ends),
            Length = map.Length("length"),
            Splices = map.Whole("splices") ?? OfRoutes(near, far, r => r.Splices),
            PairsBetween = map.Whole("connections")
                ?? Math.Max(0, OfRoutes(near, far, r => r.Connections ?? 0) - TrunkGroup.PairsAtEnds(TrunkGroup.CassettesAt(ends))),
            MeasuredLoss = map.Decibels("measured-loss"),
            Growth = map.Share("growth"),
            IsExisting = map.Switch("existing") ?? false,
            Side = map.Text("side") ?? SideOfSets(name),
            Span = span,
        };
    }

    /// <summary>The side of the sets of links that are led through trunks; empty where none states one, or where they differ, which is told
    /// where the sets are read.</summary>
    private string SideOfSets(string trunk)
    {
        var sides = tree.Entries("links")
            .Where(s => s.Map.Texts("through").Any(t => t.Value == trunk))
            .Select(s => s.Map.Text("side") ?? "").Where(s => s.Length > 0).Distinct().ToList();
        return sides is [var only] ? only : "";
    }

    /// <summary>A trunk between halls has what the routes on its way say, all together where it passes further halls; of several ways the
    /// most, whichever it is laid along.</summary>
    private int OfRoutes(int near, int far, Func<HallRoute, int> count)
    {
        if (devices.Rack(near) is not { } from || devices.Rack(far) is not { } to || from.Hall == to.Hall) return 0;
        var direct = building.RoutesBetween(from.Hall, to.Hall).Select(count).DefaultIfEmpty(0).Max();
        // Of several routes between two halls on the way the most as well.
        return HallChain.Between(building, from, to) is { Routes.Length: > 1 } chain
            ? Math.Max(direct, chain.Routes.Sum(r => building.RoutesBetween(r.From, r.To).Max(count)))
            : direct;
    }

    /// <summary>Which ends have the cassette; null where the plan says where it is and not which.</summary>
    private CassetteEnds? Ends(MapNode map, SundryModel? cassette)
    {
        var at = map.Text("cassette-at");
        if (cassette is null && at is not null)
        {
            findings.Add(ModelFindings.TrunkContradicts, map.SpanOf("cassette-at"),
                "it says where the cassette is and not which; name one with 'cassette', or leave the key out");
            return null;
        }
        return cassette is null ? CassetteEnds.None
            : at switch { "from" => CassetteEnds.From, "to" => CassetteEnds.To, _ => CassetteEnds.Both };
    }

    private bool Contradicts(MapNode map, bool isDuplex)
    {
        var wrong = isDuplex ? "type" : "method";
        if (map[wrong] is null) return false;
        findings.Add(ModelFindings.TrunkContradicts, map.SpanOf(wrong), isDuplex
            ? "behind cassettes the method says how fibres go; write 'method' instead of 'type'"
            : "a method speaks of duplex ports at both ends; name a cassette for both, or write the type of the array cable");
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

    /// <summary>Between cassettes the parts of the method without its cords. An open end has an adapter of type A at the panel's front. A
    /// cassette at one end only serves the ports of a split cage: pairs are its outermost positions first, as a fan-out cord has
    /// them.</summary>
    private ImmutableArray<ArrayPart> Parts(string method, CassetteEnds ends)
    {
        var table = standards.Polarity;
        if (ends == CassetteEnds.Both)
        {
            var (words, adapter) = table.MethodOf(method);
            return FibreChainReader.TryRead(words, [adapter], table, out var parts, out _)
                ? [.. parts.Where(p => p.Kind != ArrayPartKind.Cord)]
                : [];
        }
        var (cable, join) = (table.Part(ArrayPartKind.Cable, method), table.Part(ArrayPartKind.Adapter, "A"));
        var split = table.Part(ArrayPartKind.Transition, "paired");
        ArrayPart?[] all =
        [
            ends == CassetteEnds.From ? split : null, join, cable, join, ends == CassetteEnds.To ? split : null,
        ];
        return [.. all.OfType<ArrayPart>()];
    }
}
