using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Lanewright.Notation;

/// <summary>Turns the parser's events into nodes, within bounds.</summary>
internal sealed class YamlTreeBuilder
{
    private readonly SourceText source;
    private readonly FindingSink findings;
    private readonly Scanner scanner;
    private readonly Parser parser;
    private readonly Dictionary<string, (Node Node, int Values)> anchors = new(StringComparer.Ordinal);
    private int values;

    public YamlTreeBuilder(SourceText source, string text, FindingSink findings)
    {
        this.source = source;
        this.findings = findings;
        scanner = new Scanner(new StringReader(text), skipComments: true);
        parser = new Parser(scanner);
    }

    /// <summary>The tree, or null when the text holds none.</summary>
    /// <exception cref="YamlException">The text is not well-formed.</exception>
    public Node? Build()
    {
        try
        {
            return BuildTree();
        }
        catch (InvalidOperationException)
        {
            // The scanner gives up in this way on some texts, such as a map in braces that is never closed.
            var at = scanner.CurrentPosition;
            throw new YamlException(at, at, "a bracket or brace that was opened above is not closed, or a comma is missing");
        }
    }

    private Node? BuildTree()
    {
        parser.Consume<StreamStart>();
        if (!parser.Accept<DocumentStart>(out _)) return null;
        parser.Consume<DocumentStart>();
        var root = ReadNode(0);
        parser.Consume<DocumentEnd>();
        if (parser.Accept<DocumentStart>(out var second))
        {
            findings.Add(NotationFindings.SyntaxFault, SpanOf(second),
                "a plan file holds one document; put the second one into a file of its own");
        }
        return root;
    }

    private Node ReadNode(int level)
    {
        var before = values;
        if (level > TreeBounds.MostLevels) Refuse(parser.Current, $"nested more than {TreeBounds.MostLevels} levels deep");
        Count(1, parser.Current);
        if (parser.TryConsume<AnchorAlias>(out var alias)) return Repeat(alias);
        Node node;
        AnchorName anchor;
        if (parser.TryConsume<Scalar>(out var scalar))
        {
            anchor = scalar.Anchor;
            node = MakeScalar(scalar);
        }
        else if (parser.TryConsume<SequenceStart>(out var sequence))
        {
            anchor = sequence.Anchor;
            node = ReadList(sequence, level);
        }
        else
        {
            var mapping = parser.Consume<MappingStart>();
            anchor = mapping.Anchor;
            node = ReadMap(mapping, level);
        }
        if (!anchor.IsEmpty) anchors[anchor.Value] = (node, values - before);
        return node;
    }

    private ListNode ReadList(SequenceStart start, int level)
    {
        var items = ImmutableArray.CreateBuilder<Node>();
        while (!parser.TryConsume<SequenceEnd>(out _)) items.Add(ReadNode(level + 1));
        var last = items.Count > 0 ? items[^1].Span : SpanOf(start);
        return new ListNode(SpanBetween(start, last), items.ToImmutable());
    }

    private MapNode ReadMap(MappingStart start, int level)
    {
        var entries = ImmutableArray.CreateBuilder<MapEntry>();
        var names = new HashSet<string>(StringComparer.Ordinal);
        while (!parser.TryConsume<MappingEnd>(out _))
        {
            var key = ReadNode(level + 1);
            var value = ReadNode(level + 1);
            if (key is not ScalarNode name)
            {
                findings.Add(NotationFindings.WrongKind, key.Span, "a key is a single word or text");
                continue;
            }
            if (!names.Add(name.Value))
            {
                findings.Add(NotationFindings.KeyRepeated, key.Span, $"'{name.Value}' is set twice here; keep one of the two");
                continue;
            }
            entries.Add(new MapEntry(name, value));
        }
        var last = entries.Count > 0 ? entries[^1].Value.Span : SpanOf(start);
        return new MapNode(SpanBetween(start, last), entries.ToImmutable());
    }

    private ScalarNode MakeScalar(Scalar scalar)
    {
        if (scalar.Value.Length > TreeBounds.MostCharactersInValue)
            Refuse(scalar, $"a value of more than {TreeBounds.MostCharactersInValue} characters");
        var empty = scalar.Style == ScalarStyle.Plain && scalar.Value is "" or "~" or "null";
        return Characters.Checked(new ScalarNode(SpanOf(scalar), scalar.Value, empty), findings);
    }

    private Node Repeat(AnchorAlias alias)
    {
        if (!anchors.TryGetValue(alias.Value.Value, out var target))
        {
            findings.Add(NotationFindings.SyntaxFault, SpanOf(alias), $"nothing before this place is marked '&{alias.Value.Value}'");
            return new ScalarNode(SpanOf(alias), "", IsEmpty: true);
        }
        // A repeated value costs what it would cost written out, so that repetitions of repetitions stay bounded.
        Count(target.Values, alias);
        return target.Node;
    }

    private void Count(int more, ParsingEvent? at)
    {
        values += more;
        if (values > TreeBounds.MostValues) Refuse(at, $"more than {TreeBounds.MostValues} values, repetitions counted");
    }

    private void Refuse(ParsingEvent? at, string what)
    {
        var span = at is null ? source.Span(0, 0) : SpanOf(at);
        findings.Add(NotationFindings.TextOutOfBounds, span, $"the file is not read any further: {what}");
        throw new TreeRefused();
    }

    private SourceSpan SpanOf(ParsingEvent e)
    {
        var start = (int)Math.Min(e.Start.Index, source.Content.Length);
        var end = (int)Math.Min(e.End.Index, source.Content.Length);
        return source.Span(start, Math.Max(0, end - start));
    }

    private SourceSpan SpanBetween(ParsingEvent start, SourceSpan last)
    {
        var from = (int)Math.Min(start.Start.Index, source.Content.Length);
        return source.Span(from, Math.Max(0, last.Start + last.Length - from));
    }
}
