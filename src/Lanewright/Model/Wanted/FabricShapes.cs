using System.Collections.Immutable;

namespace Lanewright.Model.Wanted;

/// <summary>Shapes of fabrics by name.</summary>
public static class FabricShapes
{
    /// <summary>All shapes, the simplest first.</summary>
    public static ImmutableArray<FabricShape> All { get; } = [.. Enum.GetValues<FabricShape>()];

    /// <summary>A shape as plans, flags and answers name it.</summary>
    public static string Word(FabricShape shape) => shape switch
    {
        FabricShape.FixedBox => "one-box",
        FabricShape.Chassis => "chassis",
        FabricShape.CollapsedPair => "pair",
        FabricShape.LeafSpine => "leaf-spine",
        FabricShape.ThreeTier => "three-tier",
        FabricShape.Planes => "planes",
        _ => "rails",
    };

    /// <summary>A shape as a heading has it.</summary>
    public static string Title(FabricShape shape) => shape switch
    {
        FabricShape.FixedBox => "One fixed box",
        FabricShape.Chassis => "One chassis",
        FabricShape.CollapsedPair => "Collapsed pair",
        FabricShape.LeafSpine => "Leaf and spine",
        FabricShape.ThreeTier => "Three tiers",
        FabricShape.Planes => "Planes",
        _ => "Rails",
    };
}
