using Lanewright.Notation;

namespace Lanewright.Model.Binding;

/// <summary>What a plan may say of labels.</summary>
internal static class LabelLanguage
{
    /// <summary>The labels of cable ends.</summary>
    public static MapShape Section { get; } = new("the labels",
    [
        new("width", Shapes.Length, "width of one") { Otherwise = "60 mm" },
        new("height", Shapes.Length, "height of one") { Otherwise = "18 mm" },
        new("columns", Shapes.Whole(1, 12), "labels side by side on a sheet") { Otherwise = "3" },
    ]);

    /// <summary>What a section says, and what is usual where it is silent.</summary>
    public static LabelSize Read(MapNode? map) => map is null
        ? LabelSize.Usual
        : new LabelSize(map.Length("width") ?? LabelSize.Usual.Width, map.Length("height") ?? LabelSize.Usual.Height,
            map.Whole("columns") ?? LabelSize.Usual.Columns);
}
