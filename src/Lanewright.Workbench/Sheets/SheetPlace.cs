namespace Lanewright.Workbench.Sheets;

/// <summary>A place among the sheets.</summary>
/// <param name="Sheet">The kind of sheet.</param>
/// <param name="Thing">Which one thing of it; empty for the whole sheet.</param>
/// <param name="Mark">What to look for on it; empty for nothing.</param>
internal sealed record SheetPlace(string Sheet, string Thing, string Mark);
