using System.Collections.Immutable;

namespace Lanewright.Workbench.Desk;

/// <summary>Which lines of a text differ from those of another: as few as can be, where the changed part is no longer than
/// <see cref="MostCompared"/> lines, else the whole part.</summary>
public static class LineChanges
{
    /// <summary>Lines of a changed part, of both texts multiplied, that are told apart one by one at most.</summary>
    private const long MostCompared = 4_000_000;

    /// <summary>The lines that differ, in order: those that are gone beside those in their place.</summary>
    /// <param name="before">One text.</param>
    /// <param name="after">The other.</param>
    public static ImmutableArray<LineChange> Of(string before, string after)
    {
        string[] old = before.Split('\n'), now = after.Split('\n');
        var (start, end) = LineMerge.Changed(old, now);
        var (gone, come) = (old[start..end], now[start..(now.Length - (old.Length - end))]);
        var common = (long)gone.Length * come.Length <= MostCompared ? Common(gone, come) : [];
        return Beside(gone, come, start, [.. common, (gone.Length, come.Length)]);
    }

    /// <summary>The lines between one that both have and the next.</summary>
    private static ImmutableArray<LineChange> Beside(string[] gone, string[] come, int start, List<(int Old, int New)> common)
    {
        var changes = ImmutableArray.CreateBuilder<LineChange>();
        var (i, j) = (0, 0);
        foreach (var (old, now) in common)
        {
            for (; i < old || j < now;)
            {
                var (was, isNow) = (i < old ? i++ : -1, j < now ? j++ : -1);
                var (wasLine, isLine) = (was < 0 ? 0 : start + was + 1, isNow < 0 ? 0 : start + isNow + 1);
                changes.Add(new LineChange(wasLine, was < 0 ? "" : gone[was], isLine, isNow < 0 ? "" : come[isNow]));
            }
            (i, j) = (old + 1, now + 1);
        }
        return changes.ToImmutable();
    }

    /// <summary>The longest row of lines that both have in the same order.</summary>
    private static List<(int Old, int New)> Common(string[] old, string[] now)
    {
        var lengths = new int[old.Length + 1, now.Length + 1];
        for (var i = old.Length - 1; i >= 0; i--)
            for (var j = now.Length - 1; j >= 0; j--)
                lengths[i, j] = Same(old[i], now[j]) ? lengths[i + 1, j + 1] + 1 : Math.Max(lengths[i + 1, j], lengths[i, j + 1]);
        var common = new List<(int Old, int New)>();
        for (var (i, j) = (0, 0); i < old.Length && j < now.Length;)
        {
            if (Same(old[i], now[j])) common.Add((i++, j++));
            else if (lengths[i + 1, j] >= lengths[i, j + 1]) i++;
            else j++;
        }
        return common;
    }

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);
}
