namespace Lanewright.Engineering.Fabrics;

/// <summary>One thing that is wanted of a fabric, which a design keeps or breaks.</summary>
/// <param name="Key">Its key in the plan language.</param>
/// <param name="Text">What is wanted, in words.</param>
/// <param name="IsKept">Whether a design keeps it.</param>
public sealed record Wish(string Key, string Text, Func<FabricNeeds, bool> IsKept);
