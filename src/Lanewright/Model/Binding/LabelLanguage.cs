using System.Collections.Immutable;
using Lanewright.Notation;

namespace Lanewright.Model.Binding;

/// <summary>What a plan may say of the sheets its labels are printed on.</summary>
internal static class LabelLanguage
{
    /// <summary>Pages by name; their sizes are rows of the facility table.</summary>
    public static ImmutableArray<string> Pages { get; } = ["A4", "A5", "letter"];

    /// <summary>The section.</summary>
    public static MapShape Section { get; } = new("the label sheets",
    [
        new("page", Shapes.OneOf(Pages), "size of the page, upright") { Otherwise = "A4" },
        new("width", Shapes.LengthBetween(25, 300), "width of a label") { Otherwise = "60 mm" },
        new("height", Shapes.LengthBetween(9, 300), "height of a label") { Otherwise = "24 mm" },
        new("columns", Shapes.Whole(1, 40), "labels side by side") { Otherwise = "3" },
        new("rows", Shapes.Whole(1, 100), "labels one below the other") { Otherwise = "11" },
        new("left", Shapes.Length, "from the left edge of the page to the first label") { Otherwise = "15 mm" },
        new("top", Shapes.Length, "from the upper edge of the page to the first label") { Otherwise = "16.5 mm" },
        new("gap-across", Shapes.Length, "between labels side by side") { Otherwise = "0 mm" },
        new("gap-down", Shapes.Length, "between labels one below the other") { Otherwise = "0 mm" },
    ]);
}
