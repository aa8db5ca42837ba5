namespace Lanewright.Workbench.Desk;

/// <summary>Puts two changes of one text together where they touch different lines. Each side counts as one change from its first changed
/// line to its last: what is merged is then certain to be what both meant.</summary>
internal static class LineMerge
{
    /// <summary>The text with both changes; null where they touch.</summary>
    /// <param name="before">The text both began with.</param>
    /// <param name="one">One change of it.</param>
    /// <param name="other">The other.</param>
    public static string? Of(string before, string one, string other)
    {
        if (string.Equals(one, other, StringComparison.Ordinal) || string.Equals(before, other, StringComparison.Ordinal)) return one;
        if (string.Equals(before, one, StringComparison.Ordinal)) return other;
        string[] old = before.Split('\n'), first = one.Split('\n'), second = other.Split('\n');
        var (a, b) = (Changed(old, first), Changed(old, second));
        if (a.Start > b.Start || (a.Start == b.Start && a.End > b.End))
        {
            (a, b) = (b, a);
            (first, second) = (second, first);
        }
        // Lines side by side are too near: a key and its value may be two lines.
        if (a.End >= b.Start) return null;
        return string.Join('\n',
            [
                .. old[..a.Start], .. first[a.Start..(first.Length - (old.Length - a.End))],
                .. old[a.End..b.Start], .. second[b.Start..(second.Length - (old.Length - b.End))],
                .. old[b.End..],
            ]);
    }

    /// <summary>Which lines of the old text a change replaces: from the first up to, not with, the end.</summary>
    internal static (int Start, int End) Changed(string[] old, string[] changed)
    {
        var most = Math.Min(old.Length, changed.Length);
        var start = 0;
        while (start < most && string.Equals(old[start], changed[start], StringComparison.Ordinal)) start++;
        var tail = 0;
        while (tail < most - start && string.Equals(old[^(tail + 1)], changed[^(tail + 1)], StringComparison.Ordinal)) tail++;
        return (start, old.Length - tail);
    }
}
