namespace Lanewright.Notation;

/// <summary>A list; a single member may stand without its list.</summary>
/// <param name="Item">What each member may be.</param>
public sealed record ListShape(Shape Item) : Shape
{
    /// <inheritdoc/>
    public override string Expected => $"a list of: {Item.Expected}";
}
