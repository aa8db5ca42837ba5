namespace Lanewright.Deliverables.Drawings.Section;

/// <summary>How a kind of cable is told from others where it is cut across: five shades, the same five as rings when those are used up,
/// and with a bar after that.</summary>
internal static class CableMark
{
    private const double Inside = 0.55;
    private const double BarHalf = 0.8;
    private const double BarThick = 0.4;

    /// <summary>Shades that are so dark that marks on them are light.</summary>
    private const int Dark = 2;

    private static readonly string[] Shades = ["shade1", "shade2", "shade3", "shade4", "hollow"];

    /// <summary>Draws one.</summary>
    public static void Draw(Canvas canvas, double x, double y, double radius, int kind)
    {
        canvas.Circle(x, y, radius, Shades[kind % Shades.Length]);
        var mark = kind % Shades.Length < Dark ? "light" : "full";
        switch (kind / Shades.Length)
        {
            case 0:
                return;
            case 1:
                canvas.Circle(x, y, radius * Inside, mark);
                return;
            default:
                canvas.Box(x - (radius * BarHalf), y - (radius * BarThick / 2), radius * BarHalf * 2, radius * BarThick, mark);
                return;
        }
    }
}
