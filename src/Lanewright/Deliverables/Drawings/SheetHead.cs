namespace Lanewright.Deliverables.Drawings;

/// <summary>What a drawing says about itself.</summary>
/// <param name="Id">Its identifier, which is also the name of its file.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Subtitle">The same in more words, on one line.</param>
/// <param name="Description">The drawing in words, for those who do not see it.</param>
internal sealed record SheetHead(string Id, string Title, string Subtitle, string Description)
{
    /// <summary>What keeps a reader from harm, on a line of its own; empty where nothing does.</summary>
    public string Caution { get; init; } = "";
}
