namespace Lanewright.Workbench.Sheets;

/// <summary>What a sheet shows.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Body">Its content as markup that this program wrote.</param>
/// <param name="IsFound">Whether there is such a thing in the plan.</param>
internal sealed record Page(string Title, string Body, bool IsFound);
