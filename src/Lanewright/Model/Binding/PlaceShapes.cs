using Lanewright.Notation;

namespace Lanewright.Model.Binding;

/// <summary>How plans name places.</summary>
internal static class PlaceShapes
{
    /// <summary>A rack, several, or a whole row.</summary>
    public static ScalarShape Racks { get; } =
        Shapes.Matching("racks such as 'hall/A/1' or 'hall/A/1..12'", t => t.Split('/').Length is >= 2 and <= 4, "^[^/]+(/[^/]+){1,3}$");

    /// <summary>A hall.</summary>
    public static ScalarShape Hall { get; } =
        Shapes.Matching("a hall, or site/hall", t => t.Split('/').Length is 1 or 2, "^[^/]+(/[^/]+)?$");
}
