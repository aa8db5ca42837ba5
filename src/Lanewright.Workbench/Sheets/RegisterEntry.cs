namespace Lanewright.Workbench.Sheets;

/// <summary>A kind of sheet.</summary>
/// <param name="Key">Its place in addresses.</param>
/// <param name="Title">Its title.</param>
/// <param name="IsListed">Whether it stands in the list of sheets.</param>
/// <param name="Choice">Which texts of the plan it may be asked to show.</param>
/// <param name="Write">Writes it; gives back whether what was asked for is there.</param>
internal sealed record RegisterEntry(string Key, string Title, bool IsListed, SideChoice Choice, Func<SheetPaper, bool> Write);
