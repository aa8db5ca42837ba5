using System.Collections.Immutable;

namespace Lanewright.Deliverables.Drawings.Ladder;

/// <summary>Words at the right of a ladder that belong to a height on it.</summary>
/// <param name="Y">The height.</param>
/// <param name="Lines">The words.</param>
/// <param name="Heads">How many lines say what counts: they come first.</param>
/// <param name="Style">How those look.</param>
internal sealed record LadderLabel(double Y, ImmutableArray<string> Lines, int Heads, string Style)
{
    /// <summary>From one line to the next.</summary>
    public const double Step = 14;

    private const double Gap = 8;

    /// <summary>The height the words take.</summary>
    public double Height => Lines.Length * Step;

    /// <summary>Moves labels apart so that none covers another: as little as possible, and none above the top.</summary>
    public static ImmutableArray<(LadderLabel Label, double Top)> Spread(IEnumerable<LadderLabel> labels, double top, double bottom)
    {
        var sorted = labels.OrderBy(l => l.Y).ToList();
        var tops = new double[sorted.Count];
        var next = top;
        for (var i = 0; i < sorted.Count; i++)
        {
            tops[i] = Math.Max(next, sorted[i].Y - (sorted[i].Height / 2));
            next = tops[i] + sorted[i].Height + Gap;
        }
        // What was pushed below the bottom pushes its neighbours up again.
        var floor = bottom;
        for (var i = sorted.Count - 1; i >= 0; i--)
        {
            tops[i] = Math.Max(top, Math.Min(tops[i], floor - sorted[i].Height));
            floor = tops[i] - Gap;
        }
        return [.. sorted.Select((l, i) => (l, tops[i]))];
    }
}
