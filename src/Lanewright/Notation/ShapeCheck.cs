using Lanewright.Findings;
using Lanewright.Text;

namespace Lanewright.Notation;

/// <summary>Holds a tree against its shape and reports every difference.</summary>
public static class ShapeCheck
{
    /// <summary>Checks a node; findings tell what does not fit.</summary>
    public static void Check(Node node, Shape shape, FindingSink findings)
    {
        switch (shape)
        {
            case ScalarShape scalar:
                CheckScalar(node, scalar, findings);
                break;
            case MapShape map:
                CheckMap(node, map, findings);
                break;
            case NamesShape names:
                CheckNames(node, names, findings);
                break;
            case ListShape list:
                CheckList(node, list, findings);
                break;
            case EitherShape either:
                Check(node, node is MapNode ? either.Long : either.Short, findings);
                break;
            default:
                throw new InvalidOperationException("a shape nobody checks: " + shape.GetType().Name);
        }
    }

    private static void CheckScalar(Node node, ScalarShape shape, FindingSink findings)
    {
        if (node is not ScalarNode scalar)
        {
            findings.Add(NotationFindings.WrongKind, Head(node), $"{node.Kind} stands here; write {shape.Expected}");
            return;
        }
        if (!scalar.IsEmpty && shape.Accepts(scalar.Value)) return;
        var near = shape.Choices.IsEmpty ? "" : Spelling.DidYouMean(scalar.Value, shape.Choices);
        var what = scalar.IsEmpty ? "nothing is written here" : $"'{Shortened(scalar.Value)}' does not read as a value here";
        findings.Add(NotationFindings.ValueUnreadable, scalar.Span, $"{what}; write {shape.Expected}{near}");
    }

    private static void CheckMap(Node node, MapShape shape, FindingSink findings)
    {
        if (node is not MapNode map)
        {
            findings.Add(NotationFindings.WrongKind, Head(node), $"{node.Kind} stands here; write {shape.Expected}");
            return;
        }
        foreach (var entry in map.Entries)
        {
            var key = shape.Keys.FirstOrDefault(k => k.Name == entry.Key.Value);
            if (key is not null)
            {
                Check(entry.Value, key.Value, findings);
                continue;
            }
            var near = Spelling.DidYouMean(entry.Key.Value, shape.Keys.Select(k => k.Name));
            var all = near.Length > 0 ? "" : "; known keys are " + string.Join(", ", shape.Keys.Select(k => k.Name));
            findings.Add(NotationFindings.KeyUnknown, entry.Key.Span, $"'{Shortened(entry.Key.Value)}' is not a key of {shape.Title}{near}{all}");
        }
        // An empty list says no more than a key left out.
        foreach (var key in shape.Keys.Where(k => k.IsRequired && map[k.Name] is null or ListNode { Items.IsEmpty: true }))
            findings.Add(NotationFindings.KeyMissing, Head(map), $"'{key.Name}' is missing from {shape.Title}: {key.Meaning}");
    }

    private static void CheckNames(Node node, NamesShape shape, FindingSink findings)
    {
        if (node is not MapNode map)
        {
            findings.Add(NotationFindings.WrongKind, Head(node), $"{node.Kind} stands here; write {shape.Expected}");
            return;
        }
        foreach (var entry in map.Entries)
        {
            if (entry.Key.Value.Trim().Length == 0)
                findings.Add(NotationFindings.ValueUnreadable, entry.Key.Span, $"a name of {shape.Title} is not empty");
            Check(entry.Value, shape.Entry, findings);
        }
    }

    private static void CheckList(Node node, ListShape shape, FindingSink findings)
    {
        if (node is not ListNode list)
        {
            Check(node, shape.Item, findings);
            return;
        }
        foreach (var item in list.Items) Check(item, shape.Item, findings);
    }

    /// <summary>The first line of a long thing is enough to find it.</summary>
    private static SourceSpan Head(Node node)
    {
        var newline = node.Span.Text.IndexOf('\n', StringComparison.Ordinal);
        return newline < 0 ? node.Span : node.Span with { Length = newline };
    }

    private static string Shortened(string text) => text.Length <= 60 ? text : text[..57] + "...";
}
