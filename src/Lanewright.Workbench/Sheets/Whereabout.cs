namespace Lanewright.Workbench.Sheets;

/// <summary>Where a thing is.</summary>
/// <param name="Page">Where it is told of.</param>
/// <param name="Drawing">Where it is drawn besides; null where it is not, or where its page shows it.</param>
internal sealed record Whereabout(SheetPlace Page, SheetPlace? Drawing);
