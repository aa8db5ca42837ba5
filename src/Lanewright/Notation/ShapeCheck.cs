using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Text;

namespace Lanewright.Notation;

/// <summary>Holds a tree against its shape and reports every difference.</summary>
public static class ShapeCheck
{
    /// <summary>Checks a node; findings tell what does not fit. What comes back is the node with every single value emptied that
    /// does not read, so that nobody computes with it.</summary>
    public static Node Check(Node node, Shape shape, FindingSink findings) => shape switch
    {
        ScalarShape scalar => CheckScalar(node, scalar, findings),
        MapShape map => CheckMap(node, map, findings),
        NamesShape names => CheckNames(node, names, findings),
        ListShape list => CheckList(node, list, findings),
        EitherShape either => Check(node, node is MapNode ? either.Long : either.Short, findings),
        _ => throw new InvalidOperationException("a shape nobody checks: " + shape.GetType().Name),
    };

    /// <summary>Checks the root of a file; null when the file is no such file at all. Of a file that has not one of the keys nothing is
    /// repeated: it may be anybody's.</summary>
    public static MapNode? CheckFile(Node root, MapShape shape, FindingSink findings)
    {
        var known = shape.Keys.Select(k => k.Name).ToList();
        if (root is MapNode { Entries.IsEmpty: false } map && map.Entries.All(e => Spelling.Nearest(e.Key.Value, known) is null))
        {
            findings.Add(NotationFindings.WrongKind, map.Entries[0].Key.Span with { Length = 0 },
                $"no key of {shape.Title} stands in this file; is it another one that is meant?");
            return null;
        }
        return Check(root, shape, findings) as MapNode;
    }

    private static Node CheckScalar(Node node, ScalarShape shape, FindingSink findings)
    {
        if (node is not ScalarNode scalar)
        {
            findings.Add(NotationFindings.WrongKind, Head(node), $"{node.Kind} stands here; write {shape.Expected}");
            return node;
        }
        if (!scalar.IsEmpty && shape.Accepts(scalar.Value)) return scalar;
        var near = shape.Choices.IsEmpty ? "" : Spelling.DidYouMean(scalar.Value, shape.Choices);
        var what = scalar.IsEmpty ? "nothing is written here" : $"'{Quoted.Short(scalar.Value)}' does not read as a value here";
        findings.Add(NotationFindings.ValueUnreadable, scalar.Span, $"{what}; write {shape.Expected}{near}");
        return new ScalarNode(scalar.Span, "", IsEmpty: true);
    }

    private static Node CheckMap(Node node, MapShape shape, FindingSink findings)
    {
        if (node is not MapNode map)
        {
            findings.Add(NotationFindings.WrongKind, Head(node), $"{node.Kind} stands here; write {shape.Expected}");
            return node;
        }
        var values = ImmutableArray.CreateBuilder<Node>(map.Entries.Length);
        var meant = new HashSet<string>(StringComparer.Ordinal);
        foreach (var entry in map.Entries)
        {
            var key = shape.Keys.FirstOrDefault(k => k.Name == entry.Key.Value);
            values.Add(key is null ? entry.Value : Check(entry.Value, key.Value, findings));
            if (key is not null) continue;
            var near = Spelling.DidYouMean(entry.Key.Value, shape.Keys.Select(k => k.Name));
            if (Spelling.Nearest(entry.Key.Value, shape.Keys.Select(k => k.Name)) is { } name) meant.Add(name);
            var all = near.Length > 0 ? "" : "; known keys are " + string.Join(", ", shape.Keys.Select(k => k.Name));
            findings.Add(NotationFindings.KeyUnknown, entry.Key.Span,
                $"'{Quoted.Short(entry.Key.Value)}' is not a key of {shape.Title}{near}{all}");
        }
        // An empty list says no more than a key left out; a misspelt key has been reported and is not missed as well.
        foreach (var key in shape.Keys.Where(k => k.IsRequired && map[k.Name] is null or ListNode { Items.IsEmpty: true }))
        {
            if (map[key.Name] is null && meant.Contains(key.Name)) continue;
            findings.Add(NotationFindings.KeyMissing, Head(map), $"'{key.Name}' is missing from {shape.Title}: {key.Meaning}");
        }
        return WithValues(map, values);
    }

    private static Node CheckNames(Node node, NamesShape shape, FindingSink findings)
    {
        if (node is not MapNode map)
        {
            findings.Add(NotationFindings.WrongKind, Head(node), $"{node.Kind} stands here; write {shape.Expected}");
            return node;
        }
        var values = ImmutableArray.CreateBuilder<Node>(map.Entries.Length);
        foreach (var entry in map.Entries)
        {
            if (entry.Key.Value.Trim().Length == 0)
                findings.Add(NotationFindings.ValueUnreadable, entry.Key.Span, $"a name of {shape.Title} is not empty");
            values.Add(Check(entry.Value, shape.Entry, findings));
        }
        return WithValues(map, values);
    }

    private static Node CheckList(Node node, ListShape shape, FindingSink findings)
    {
        if (node is not ListNode list) return Check(node, shape.Item, findings);
        var isChanged = false;
        var items = ImmutableArray.CreateBuilder<Node>(list.Items.Length);
        foreach (var item in list.Items)
        {
            items.Add(Check(item, shape.Item, findings));
            isChanged |= !ReferenceEquals(items[^1], item);
        }
        return isChanged ? list with { Items = items.MoveToImmutable() } : list;
    }

    /// <summary>The map itself when no value changed: a plan of a million values is not copied.</summary>
    private static MapNode WithValues(MapNode map, ImmutableArray<Node>.Builder values)
    {
        ImmutableArray<MapEntry>.Builder? changed = null;
        for (var i = 0; i < values.Count; i++)
        {
            if (ReferenceEquals(values[i], map.Entries[i].Value)) continue;
            changed ??= map.Entries.ToBuilder();
            changed[i] = changed[i] with { Value = values[i] };
        }
        return changed is null ? map : map with { Entries = changed.ToImmutable() };
    }

    /// <summary>The first line of a long thing is enough to find it.</summary>
    private static SourceSpan Head(Node node)
    {
        var newline = node.Span.Text.IndexOf('\n', StringComparison.Ordinal);
        return newline < 0 ? node.Span : node.Span with { Length = newline };
    }

}
