using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Notation;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>The files of a plan, read and held against the language, with their sections put together.</summary>
internal sealed class PlanTree
{
    private const int MostFiles = 200;

    private readonly PlanFiles files;
    private readonly FindingSink findings;
    private readonly EarlierReadings earlier;
    private readonly List<(SourceText Source, MapNode Root)> roots = [];
    private readonly HashSet<string> visited = new(StringComparer.Ordinal);
    private WantedOverlay? overlay;

    private PlanTree(PlanFiles files, FindingSink findings, EarlierReadings earlier)
    {
        this.files = files;
        this.findings = findings;
        this.earlier = earlier;
    }

    /// <summary>The first file's root; null when nothing could be made of it.</summary>
    public MapNode? Main => roots.Count > 0 ? roots[0].Root : null;

    /// <summary>The files read, in order.</summary>
    public ImmutableArray<SourceText> Sources => [.. roots.Select(r => r.Source)];

    /// <summary>Reads a plan and what it includes.</summary>
    /// <param name="files">The door to its files.</param>
    /// <param name="path">Its first file; null when the question is all there is.</param>
    /// <param name="findings">Where faults go.</param>
    /// <param name="question">A text in the plan language whose section <c>wanted</c> overrides the plan's, key by key.</param>
    /// <param name="earlier">What was made before of texts that are still the same.</param>
    public static PlanTree Read(PlanFiles files, string? path, FindingSink findings, SourceText? question, EarlierReadings earlier)
    {
        var tree = new PlanTree(files, findings, earlier) { overlay = WantedOverlay.Read(question, findings) };
        if (path is not null) tree.Add(path, default);
        if (tree.overlay?.Rest() is { } rest && (path is null || tree.Main is not null)) tree.Add(rest.Source, rest.Root);
        return tree;
    }

    /// <summary>A scalar of the first file.</summary>
    public string? Text(string key) => Main?.Text(key);

    /// <summary>A map section that one file of a plan holds; a second one is reported and not read.</summary>
    public MapNode? Map(string key)
    {
        var holders = roots.Where(r => r.Root.Map(key) is not null).ToList();
        foreach (var (source, root) in holders.Skip(1))
            findings.Add(NotationFindings.KeyRepeated, root.SpanOf(key),
                $"'{key}' stands in {holders[0].Source.Path} already, and this one would not be read; keep one of the two");
        return holders.Count > 0 ? holders[0].Root.Map(key) : null;
    }

    /// <summary>Reports included files that contradict a scalar of the first one.</summary>
    public void Agree(string key)
    {
        var meant = Text(key);
        foreach (var (_, root) in roots.Skip(1))
        {
            if (root.Text(key) is not { } other || other == meant) continue;
            var first = meant is null ? "not stated" : $"'{meant}'";
            findings.Add(NotationFindings.KeyRepeated, root.SpanOf(key),
                $"'{key}' is {first} in the first file of the plan, which decides it; write it there");
        }
    }

    /// <summary>The entries of a section of all files, in natural order of their names; a name given twice is reported.</summary>
    public ImmutableArray<(string Name, MapNode Map, SourceSpan NameSpan)> Named(string key, string what)
    {
        var named = new Dictionary<string, (string Name, MapNode Map, SourceSpan NameSpan)>(StringComparer.Ordinal);
        foreach (var (_, root) in roots)
        {
            foreach (var entry in root.Map(key)?.Entries ?? [])
            {
                if (entry.Value is not MapNode map) continue;
                if (!named.TryAdd(entry.Key.Value, (entry.Key.Value, map, entry.Key.Span)))
                    findings.Add(ModelFindings.NameTaken, entry.Key.Span,
                        $"{what} '{entry.Key.Value}' is described twice; keep one of the two");
            }
        }
        return [.. named.Values.OrderBy(n => n.Name, NaturalOrder.Instance)];
    }

    /// <summary>The entries of a section of all files that are maps, sound or not.</summary>
    public IEnumerable<(string Name, MapNode Map)> Entries(string key) =>
        from root in roots
        from entry in root.Root.Map(key)?.Entries ?? []
        where entry.Value is MapNode
        select (entry.Key.Value, (MapNode)entry.Value);

    /// <summary>Whether any file has an entry of a name in a section, sound or not.</summary>
    public bool Describes(string key, string name) => roots.Any(r => r.Root.Map(key)?[name] is not null);

    /// <summary>The members of a list section of all files.</summary>
    public ImmutableArray<MapNode> Items(string key) =>
        [.. roots.SelectMany(r => r.Root[key] switch { ListNode list => list.Items.OfType<MapNode>(), MapNode one => [one], _ => [] })];

    /// <summary>The files a list of names mentions, read; a missing one is reported.</summary>
    public ImmutableArray<SourceText> Mentioned(string key)
    {
        var read = ImmutableArray.CreateBuilder<SourceText>();
        foreach (var (source, root) in roots)
        {
            foreach (var name in root.Texts(key))
            {
                var path = files.Beside(source.Path, name.Value);
                if (files.Read(path) is { } text)
                    read.Add(text);
                else
                    findings.Add(NotationFindings.FileUnreadable, name.Span,
                        $"the file '{name.Value}' cannot be read: {files.Problem(path)}; it is looked for beside {source.Path}");
            }
        }
        return read.ToImmutable();
    }

    private void Add(string path, SourceSpan mentionedAt)
    {
        if (!visited.Add(path)) return;
        if (visited.Count > MostFiles)
        {
            findings.Add(NotationFindings.TextOutOfBounds, mentionedAt, $"a plan has at most {MostFiles} files");
            return;
        }
        if (files.Read(path) is not { } source)
        {
            findings.Add(NotationFindings.FileUnreadable, mentionedAt, $"the file '{path}' cannot be read: {files.Problem(path)}");
            return;
        }
        var before = findings.ErrorCount;
        if (earlier.Of("tree", null, [source], findings, () => YamlTree.Read(source, findings)) is not { } node)
        {
            if (findings.ErrorCount == before)
                findings.Add(NotationFindings.WrongKind, source.Span(0, 0),
                    "the file is empty; 'lanewright new' writes a plan to start from");
            return;
        }
        Add(source, overlay?.Over(node) ?? node);
    }

    private void Add(SourceText source, Node node)
    {
        if (ShapeCheck.CheckFile(node, PlanLanguage.File, findings) is not { } root) return;
        CheckVersion(root);
        roots.Add((source, root));
        foreach (var name in root.Texts("include")) Add(files.Beside(source.Path, name.Value), name.Span);
    }

    private void CheckVersion(MapNode root)
    {
        if (root.Text("lanewright") is { } version && version != PlanLanguage.Version)
            findings.Add(ModelFindings.VersionUnknown, root.SpanOf("lanewright"),
                $"this program reads version {PlanLanguage.Version} of the language, the file is in version {version}");
    }
}
