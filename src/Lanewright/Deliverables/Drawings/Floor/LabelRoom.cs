namespace Lanewright.Deliverables.Drawings.Floor;

/// <summary>Where labels stand already, so that no other is put there.</summary>
internal sealed class LabelRoom
{
    private readonly List<(double Left, double Top, double Right, double Bottom)> taken = [];

    /// <summary>Keeps a place free of labels.</summary>
    public void Take(double left, double top, double right, double bottom) => taken.Add((left, top, right, bottom));

    /// <summary>The first of several places that is free, and takes it; where none is, the first.</summary>
    /// <param name="places">Places, the best first.</param>
    /// <param name="boxAt">What the label covers when it stands at a place.</param>
    public (double X, double Y) FirstFree(
        IReadOnlyList<(double X, double Y)> places, Func<double, double, (double Left, double Top, double Right, double Bottom)> boxAt)
    {
        var found = places[0];
        foreach (var place in places)
        {
            var box = boxAt(place.X, place.Y);
            if (taken.Exists(t => t.Left < box.Right && box.Left < t.Right && t.Top < box.Bottom && box.Top < t.Bottom)) continue;
            found = place;
            break;
        }
        taken.Add(boxAt(found.X, found.Y));
        return found;
    }
}
