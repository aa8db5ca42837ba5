namespace Lanewright.Deliverables.Drawings;

/// <summary>The room that a label takes on a drawing.</summary>
/// <param name="Left">Its left edge.</param>
/// <param name="Top">Its upper edge.</param>
/// <param name="Right">Its right edge.</param>
/// <param name="Bottom">Its lower edge.</param>
internal readonly record struct LabelBox(double Left, double Top, double Right, double Bottom)
{
    /// <summary>A box about a middle.</summary>
    public static LabelBox About(double x, double y, double width, double height) =>
        new(x - (width / 2), y - (height / 2), x + (width / 2), y + (height / 2));

    /// <summary>Its middle.</summary>
    public (double X, double Y) Middle => ((Left + Right) / 2, (Top + Bottom) / 2);

    /// <summary>Whether the two share any room.</summary>
    public bool Meets(LabelBox other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    /// <summary>Whether all of it lies in another.</summary>
    public bool IsIn(LabelBox other) => Left >= other.Left && Right <= other.Right && Top >= other.Top && Bottom <= other.Bottom;

    /// <summary>Whether a straight line goes through it.</summary>
    public bool Meets((double X, double Y) from, (double X, double Y) to)
    {
        var (enters, leaves) = (0.0, 1.0);
        return Clip(from.X, to.X - from.X, Left, Right) && Clip(from.Y, to.Y - from.Y, Top, Bottom);

        bool Clip(double start, double way, double low, double high)
        {
            if (way == 0) return start > low && start < high;
            var (first, last) = ((low - start) / way, (high - start) / way);
            enters = Math.Max(enters, Math.Min(first, last));
            leaves = Math.Min(leaves, Math.Max(first, last));
            return enters < leaves;
        }
    }
}
