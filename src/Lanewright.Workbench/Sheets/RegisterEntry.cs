namespace Lanewright.Workbench.Sheets;

/// <summary>A kind of sheet.</summary>
/// <param name="Key">Its place in addresses.</param>
/// <param name="Title">Its title.</param>
/// <param name="IsListed">Whether it stands in the list of sheets.</param>
/// <param name="CanStandBeside">Whether it may be shown twice on one page, for two texts of the plan.</param>
/// <param name="Write">Writes it; gives back whether what was asked for is there.</param>
internal sealed record RegisterEntry(string Key, string Title, bool IsListed, bool CanStandBeside, Func<SheetPaper, bool> Write);
