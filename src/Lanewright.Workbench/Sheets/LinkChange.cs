namespace Lanewright.Workbench.Sheets;

/// <summary>Links of one set that changed alike.</summary>
/// <param name="Set">The set.</param>
/// <param name="Was">Their kind as saved.</param>
/// <param name="Is">Their kind as typed.</param>
/// <param name="Links">How many.</param>
internal sealed record LinkChange(string Set, LinkKind Was, LinkKind Is, int Links);
