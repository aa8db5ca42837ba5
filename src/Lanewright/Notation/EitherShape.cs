namespace Lanewright.Notation;

/// <summary>Either something short, or a map that says more.</summary>
/// <param name="Short">The short form: a value or a list of values.</param>
/// <param name="Long">The map.</param>
public sealed record EitherShape(Shape Short, MapShape Long) : Shape
{
    /// <inheritdoc/>
    public override string Expected => $"{Short.Expected}, or {Long.Expected}";
}
