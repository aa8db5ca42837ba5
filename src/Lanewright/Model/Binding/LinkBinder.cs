using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;
using Lanewright.Model.Links;
using Lanewright.Model.Plant;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Turns link sections into statements with their devices resolved.</summary>
internal sealed class LinkBinder(
    PlanTree tree, Catalogue catalogue, StandardsLibrary standards, DeviceTable devices, ImmutableArray<TrunkGroup> trunks,
    FindingSink findings)
{
    private static readonly ImmutableArray<string> ItemKeys = ["module", "assembly", "cord"];

    private readonly LinkEndBinder ends = new(tree, catalogue, devices, findings);

    /// <summary>The statements that can be used, in natural order of their names.</summary>
    public ImmutableArray<LinkStatement> Bind()
    {
        var statements = ImmutableArray.CreateBuilder<LinkStatement>();
        foreach (var (name, map, span) in tree.Named("links", "the set of links"))
            if (Statement(statements.Count, name, map, span) is { } statement) statements.Add(statement);
        Pair(statements);
        return statements.ToImmutable();
    }

    /// <summary>Sets may name one another in any order, so names are looked up when all are read.</summary>
    private void Pair(ImmutableArray<LinkStatement>.Builder statements)
    {
        foreach (var (name, map, _) in tree.Named("links", "the set of links"))
        {
            if (map.Text("apart-from") is not { } wanted || statements.FirstOrDefault(s => s.Name == name) is not { } own) continue;
            var found = statements.FirstOrDefault(s => s.Name == wanted);
            // A set that is described and could not be made has been reported where it stands.
            if (found is null && tree.Describes("links", wanted)) continue;
            found = Names.Require(found, "set of links", wanted, statements.Select(s => s.Name), map.SpanOf("apart-from"), findings);
            if (found is not null) statements[own.Index] = own with { ApartFrom = found.Index };
        }
    }

    private LinkStatement? Statement(int index, string name, MapNode map, SourceSpan span)
    {
        var from = ends.End(map, "from");
        var to = ends.End(map, "to");
        if (from is null || to is null || map.Rate("rate") is not { } rate || rate.BitsPerSecond == 0) return null;
        // Between two rates nobody can tell which ports are meant, so nothing is judged until one of them is taken back.
        if (IsBreakoutContradicted(map.Map("from"), rate) | IsBreakoutContradicted(map.Map("to"), rate)) return null;
        CheckRuns(map);
        var (optical, copper) = TypeOf(map);
        var (attenuation, attenuationAt) = MeasuredFibre(map);
        var through = Trunks(map);
        if (through.IsEmpty && map.Texts("through").Length > 0) return null;
        var statement = new LinkStatement
        {
            Index = index,
            Name = name,
            From = from,
            To = to,
            Rate = rate,
            Pattern = map.Text("pattern") switch
            {
                "each-to-each" => LinkPattern.EachToEach,
                "striped" => LinkPattern.Striped,
                "same-rack" => LinkPattern.SameRack,
                "same-row" => LinkPattern.SameRow,
                "in-runs" => LinkPattern.InRuns,
                _ => LinkPattern.Paired,
            },
            Count = map.Whole("count") ?? 1,
            FromRun = map.Whole("from-run"),
            ToRun = map.Whole("to-run") ?? 1,
            Media = [.. map.Texts("medium").Select(t => t.Value)],
            Type = optical,
            CopperType = copper,
            Assembly = Item<AssemblyModel>(map, "assembly", "cable assembly"),
            Cord = Item<CordModel>(map, "cord", "cord"),
            Length = map.Length("length"),
            Through = through,
            Connections = map.Whole("connections"),
            ConnectionLoss = map.Decibels("connection-loss"),
            Splices = map.Whole("splices"),
            SpliceLoss = map.Decibels("splice-loss"),
            Reflectance = map.Decibels("reflectance"),
            Attenuation = attenuation,
            AttenuationAt = attenuationAt,
            MeasuredLoss = map.Decibels("measured-loss"),
            Attenuator = map.Decibels("attenuator"),
            IsExisting = map.Switch("existing") ?? false,
            LatencyMax = map.InUnits("latency", UnitText.Delays) is { } ns ? Duration.FromNanoseconds(ns) : null,
            Side = map.Text("side") ?? "",
            Network = map.Text("network") is { } network && network != DemandLanguage.MainNetwork ? network : "",
            Span = span,
        };
        return IsFaulty(statement, map) ? null : statement;
    }

    private static readonly ImmutableArray<string> NotThroughTrunks = ["length", "assembly", "cord", "attenuation", "measured-loss"];

    /// <summary>Trunks in series at most; more is no way anybody patches.</summary>
    private const int MostInSeries = 8;

    /// <summary>The trunks a set is patched through; empty where it names none, or one that cannot be used.</summary>
    private ImmutableArray<TrunkGroup> Trunks(MapNode map)
    {
        var names = map.Texts("through");
        if (names.IsEmpty) return [];
        if (map.Entries.FirstOrDefault(e => NotThroughTrunks.Contains(e.Key.Value)) is { } entry)
        {
            findings.Add(ModelFindings.TrunkContradicts, entry.Key.Span,
                $"'{entry.Key.Value}' speaks of one cable from end to end and the links are patched through trunks; "
                + "leave one of the two out");
            return [];
        }
        var found = names.Select(Trunk).OfType<TrunkGroup>().ToImmutableArray();
        if (found.Length < names.Length) return [];
        var problem = found.Length > MostInSeries ? $"{found.Length} trunks stand one behind the other; {MostInSeries} are the most"
            : found.Distinct().Count() < found.Length ? "a way leads through the same trunks twice; name each once"
            : found.Select(t => t.Cable.Fibre).Distinct().Count() > 1
                ? $"the trunks are of {string.Join(" and ", found.Select(t => t.Cable.Fibre).Distinct())}, and light changes from one "
                    + "fibre into another with loss; take trunks of one class of fibre"
            : map.Whole("connections") is { } stated && stated < found.Sum(t => t.Connections)
                ? $"the way has {found.Sum(t => t.Connections)} mated pairs at its panels alone and 'connections' counts {stated}; leave "
                    + "the key out, or count them all"
            : map.Text("side") is { } side && found.FirstOrDefault(t => t.Side != side) is { } other
                ? $"the set is of side '{side}' and trunks '{other.Name}' "
                    + (other.Side.Length == 0 ? "are led through by sets of several" : $"lie in side '{other.Side}'")
                    + "; state 'side' of the trunks, or lead each side through trunks of its own"
            : "";
        if (problem.Length == 0) return found;
        findings.Add(ModelFindings.TrunkContradicts, map.SpanOf("through"), problem);
        return [];
    }

    private TrunkGroup? Trunk(ScalarNode named)
    {
        var found = trunks.FirstOrDefault(t => t.Name == named.Value);
        // Trunks that are described and could not be made have been reported where they stand.
        if (found is null && tree.Describes("trunks", named.Value)) return null;
        return Names.Require(found, "trunk", named.Value, trunks.Select(t => t.Name), named.Span, findings);
    }

    /// <summary>A part of it, or a group it names, could not be read or found: that is reported, its consequences are not.</summary>
    private bool IsFaulty(LinkStatement statement, MapNode map) =>
        findings.HasErrorIn(map.Span)
        || statement.From.Groups.Any(g => g.IsFaulty)
        || statement.To.Groups.Any(g => g.IsFaulty)
        || new[] { map, map.Map("from"), map.Map("to") }.Any(m =>
            m is not null && ItemKeys.Any(key => m.Text(key) is { } name && catalogue.IsFaulty(name)));

    private static (Attenuation? Measured, Wavelength? At) MeasuredFibre(MapNode map) =>
        map.Text("attenuation") is { } text && UnitText.TryReadAttenuation(text, out var measured, out var at)
            ? (measured, at)
            : (null, null);

    private bool IsBreakoutContradicted(MapNode? end, BitRate rate)
    {
        if (end?.Text("breakout") is not { } text || !PortMode.TryRead(text, out var mode) || mode.Rate == rate) return false;
        findings.Add(ModelFindings.BreakoutContradicts, end.SpanOf("breakout"),
            $"the links run at {rate} and the cage is split into ports of {mode.Rate}; "
            + $"set the rate to {mode.Rate}, or write a split into ports of {rate}");
        return true;
    }

    /// <summary>A length of runs that no pattern reads would be lost in silence.</summary>
    private void CheckRuns(MapNode map)
    {
        if (map.Text("pattern") == "in-runs") return;
        foreach (var entry in map.Entries.Where(e => e.Key.Value is "from-run" or "to-run"))
            findings.Add(NotationFindings.KeyUnknown, entry.Key.Span,
                $"'{entry.Key.Value}' is read only where the pattern is in-runs; write that pattern, or leave the key out");
    }

    private (InterfaceType? Optical, CopperType? Copper) TypeOf(MapNode map)
    {
        if (map.Text("type") is not { } name) return (null, null);
        if (standards.Interface(name) is { } optical) return (optical, null);
        var known = standards.InterfaceTypes.Select(t => t.Name).Concat(standards.CopperTypes.Select(t => t.Name));
        return (null, Names.Require(standards.Copper(name), "interface type", name, known, map.SpanOf("type"), findings));
    }

    private T? Item<T>(MapNode map, string key, string what)
        where T : class, ICatalogueItem =>
        map.Text(key) is { } name
            ? Names.Item<T>(catalogue, what, name, map.SpanOf(key), findings)
            : null;
}
