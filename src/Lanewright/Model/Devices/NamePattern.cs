using System.Collections.Immutable;
using System.Text;
using Lanewright.Quantities;

namespace Lanewright.Model.Devices;

/// <summary>How the devices of a group are named: a text with places for numbers, such as <c>leaf-{n:2}</c>.</summary>
public sealed class NamePattern
{
    private static readonly ImmutableArray<string> Fields = ["n", "k", "rack", "row", "hall"];

    private readonly ImmutableArray<(string Text, string Field, int Digits)> parts;

    private NamePattern(string text, ImmutableArray<(string, string, int)> parts)
    {
        Text = text;
        this.parts = parts;
    }

    /// <summary>The pattern as written.</summary>
    public string Text { get; }

    /// <summary>Reads a pattern; false when a brace is open or a field is not known.</summary>
    public static bool TryRead(string text, out NamePattern pattern)
    {
        pattern = new NamePattern(text, []);
        var parts = ImmutableArray.CreateBuilder<(string, string, int)>();
        var at = 0;
        while (at < text.Length)
        {
            var open = text.IndexOf('{', at);
            if (open < 0) break;
            var close = text.IndexOf('}', open);
            if (close < 0) return false;
            var field = text[(open + 1)..close].Split(':');
            var digits = 0L;
            if (!Fields.Contains(field[0]) || field.Length > 2) return false;
            if (field.Length == 2 && !(Numerals.TryWhole(field[1], out digits) && digits is >= 1 and <= 9)) return false;
            parts.Add((text[at..open], field[0], (int)digits));
            at = close + 1;
        }
        if (text.AsSpan(at).Contains('}')) return false;
        parts.Add((text[at..], "", 0));
        pattern = new NamePattern(text, parts.ToImmutable());
        return true;
    }

    /// <summary>The pattern a group has when it states none: its name, numbered when it has several devices.</summary>
    public static NamePattern Default(string group, int count)
    {
        var pattern = new NamePattern(group, [(group, "", 0)]);
        var bare = group.Replace("{", "", StringComparison.Ordinal).Replace("}", "", StringComparison.Ordinal);
        return count > 1 && TryRead(bare + "-{n}", out var numbered) ? numbered : pattern;
    }

    /// <summary>The name of a device.</summary>
    /// <param name="n">Its number in the group, from 1.</param>
    /// <param name="k">Its number among those of the group in its rack, from 1.</param>
    /// <param name="hall">The hall; empty when it has no place.</param>
    /// <param name="row">The row; empty when it has no place.</param>
    /// <param name="rack">The rack's number; 0 when it has no place.</param>
    public string Name(int n, int k, string hall, string row, int rack)
    {
        var name = new StringBuilder();
        foreach (var (text, field, digits) in parts)
        {
            name.Append(text);
            switch (field)
            {
                case "n": Number(name, n, digits); break;
                case "k": Number(name, k, digits); break;
                case "rack": Number(name, rack, digits); break;
                case "row": name.Append(row); break;
                case "hall": name.Append(hall); break;
            }
        }
        return name.ToString();
    }

    private static void Number(StringBuilder name, int value, int digits) =>
        name.Append(digits > 0 ? Numerals.Padded(value, digits) : Numerals.Whole(value));
}
