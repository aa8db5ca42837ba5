using Lanewright.Quantities;

namespace Lanewright.Engineering.Cost;

/// <summary>How many of a part one thing of the plan needs.</summary>
/// <param name="Kind">What kind of thing it is.</param>
/// <param name="Name">Its name; empty for all cages together.</param>
/// <param name="Length">For a cable, its length.</param>
/// <param name="Needed">How many it uses.</param>
/// <param name="Existing">How many of them are there already.</param>
public sealed record PartOrigin(PartOriginKind Kind, string Name, Length? Length, long Needed, long Existing);
