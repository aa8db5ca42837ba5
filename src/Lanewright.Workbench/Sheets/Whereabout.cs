namespace Lanewright.Workbench.Sheets;

/// <summary>Where a thing is.</summary>
/// <param name="Page">Where it is told of.</param>
/// <param name="Drawing">Where it is drawn; null where it is not.</param>
internal sealed record Whereabout(SheetPlace Page, SheetPlace? Drawing);
