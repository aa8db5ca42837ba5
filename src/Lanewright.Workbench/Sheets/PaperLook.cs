namespace Lanewright.Workbench.Sheets;

/// <summary>How a table looks.</summary>
/// <param name="Style">Its style.</param>
internal readonly record struct PaperLook(string Style);
