namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>Arrow heads and diodes: filled ones belong to what leaves the first end, or to a laser; hollow ones to the way back, or to a
/// photodiode.</summary>
internal static class Arrow
{
    /// <summary>An arrow head with its middle at a point.</summary>
    public static void Head(Canvas canvas, double x, double y, double size, bool toRight, bool isFilled)
    {
        var (tip, tail) = toRight ? (x + size, x - size) : (x - size, x + size);
        var half = size * 0.72;
        canvas.Path(PathText.Of($"M{tail} {y - half}L{tip} {y}L{tail} {y + half}Z"), isFilled ? "full" : "hollow");
    }

    /// <summary>A laser or a photodiode: the arrow of its light, and a bar at its tip.</summary>
    public static void Diode(Canvas canvas, double x, double y, bool toRight, bool isLaser)
    {
        const double size = 5;
        Head(canvas, x, y, size, toRight, isLaser);
        var tip = toRight ? x + size : x - size;
        canvas.Line(tip, y - 5, tip, y + 5, "ink");
    }
}
