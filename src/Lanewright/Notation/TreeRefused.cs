namespace Lanewright.Notation;

/// <summary>Ends the reading of a text that is out of bounds; its finding has been added.</summary>
internal sealed class TreeRefused : Exception
{
    /// <inheritdoc/>
    public TreeRefused()
        : base("the text is out of bounds")
    {
    }
}
