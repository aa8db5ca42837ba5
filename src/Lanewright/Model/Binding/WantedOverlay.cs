using Lanewright.Findings;
using Lanewright.Notation;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>A question asked beside a plan: its section <c>wanted</c> overrides the plan's, key by key, before either is checked.</summary>
internal sealed class WantedOverlay
{
    private const string Section = "wanted";
    private const string Kinds = "hosts";
    private const string Count = "count";

    private readonly SourceText source;
    private readonly MapNode root;
    private readonly FindingSink findings;
    private bool isUsed;

    private WantedOverlay(SourceText source, MapNode root, FindingSink findings)
    {
        this.source = source;
        this.root = root;
        this.findings = findings;
    }

    /// <summary>Reads the question; null when there is none or it is no set of keys.</summary>
    public static WantedOverlay? Read(SourceText? question, FindingSink findings) =>
        question is { } text && YamlTree.Read(text, findings) is MapNode root ? new WantedOverlay(text, root, findings) : null;

    /// <summary>A plan file with the question laid over its section; the file itself when it has none.</summary>
    public Node Over(Node file)
    {
        if (isUsed || file is not MapNode map || map.Map(Section) is not { } stated || root.Map(Section) is not { } asked) return file;
        isUsed = true;
        return With(map, Section, Merged(stated, asked));
    }

    /// <summary>What of the question no plan file has taken up: all of it, or all but its section.</summary>
    public (SourceText Source, MapNode Root) Rest() =>
        (source, isUsed ? root with { Entries = [.. root.Entries.Where(e => e.Key.Value != Section)] } : root);

    private MapNode Merged(MapNode stated, MapNode asked)
    {
        foreach (var entry in asked.Entries)
        {
            var value = entry.Value;
            if (entry.Key.Value == Kinds && stated.Map(Kinds) is { } kinds && value is MapNode { Entries: [{ Value: MapNode kind }] })
                value = EveryKind(kinds, kind);
            stated = With(stated, entry.Key.Value, value);
        }
        return stated;
    }

    /// <summary>What is asked of hosts holds for every kind of the plan; their number cannot.</summary>
    private MapNode EveryKind(MapNode kinds, MapNode asked)
    {
        if (kinds.Entries.Length > 1 && asked.Scalar(Count) is { } count)
        {
            findings.Add(NotationFindings.ValueUnreadable, count.Span,
                $"the plan has {kinds.Entries.Length} kinds of host, and one number does not say how many of each; "
                + "change their counts there");
            return kinds;
        }
        return kinds with
        {
            Entries = [.. kinds.Entries.Select(k => k.Value is MapNode kind
                ? k with { Value = asked.Entries.Aggregate(kind, (map, e) => With(map, e.Key.Value, e.Value)) }
                : k)],
        };
    }

    private static MapNode With(MapNode map, string key, Node value)
    {
        var at = map.Entries.Select(e => e.Key.Value).ToList().IndexOf(key);
        return map with
        {
            Entries = at >= 0
                ? map.Entries.SetItem(at, map.Entries[at] with { Value = value })
                : map.Entries.Add(new MapEntry(new ScalarNode(value.Span, key), value)),
        };
    }
}
