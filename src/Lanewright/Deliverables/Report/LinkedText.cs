namespace Lanewright.Deliverables.Report;

/// <summary>A text of a page that may lead somewhere.</summary>
/// <param name="Text">The text.</param>
/// <param name="Address">Where it leads; empty for nowhere.</param>
internal readonly record struct LinkedText(string Text, string Address = "")
{
    /// <summary>A plain text.</summary>
    public static implicit operator LinkedText(string text) => new(text);
}
