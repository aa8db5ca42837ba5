namespace Lanewright.Deliverables.Drawings;

/// <summary>Gives labels their places on a drawing, one after the other, so that none lies over another or over a mark, and few over
/// lines.</summary>
/// <param name="within">Where labels may stand.</param>
internal sealed class LabelRoom(LabelBox within)
{
    private readonly List<LabelBox> taken = [];
    private readonly List<((double X, double Y) From, (double X, double Y) To)> lines = [];

    /// <summary>Takes room where no label may stand.</summary>
    public void Take(LabelBox box) => taken.Add(box);

    /// <summary>Takes a line that labels had better not lie over.</summary>
    public void Take((double X, double Y) from, (double X, double Y) to) => lines.Add((from, to));

    /// <summary>Takes room for a text about a middle; whether it was free.</summary>
    public bool IsFree(double x, double baseline, string text, double size) =>
        Place([LabelBox.About(x, baseline - (size / 3), TextFit.Width(text, size), size)]) is not null;

    /// <summary>Whether a label there lies over a line.</summary>
    public bool IsOverLine(LabelBox place) => lines.Exists(l => place.Meets(l.From, l.To));

    /// <summary>Gives the free place with the fewest lines below it, the earliest of several; null where none is free.</summary>
    public LabelBox? Place(IEnumerable<LabelBox> places)
    {
        LabelBox? best = null;
        var fewest = int.MaxValue;
        foreach (var place in places)
        {
            if (!place.IsIn(within) || taken.Any(place.Meets)) continue;
            var below = lines.Count(l => place.Meets(l.From, l.To));
            if (below >= fewest) continue;
            (best, fewest) = (place, below);
        }
        if (best is { } found) taken.Add(found);
        return best;
    }
}
