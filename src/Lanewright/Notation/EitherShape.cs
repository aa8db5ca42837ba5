namespace Lanewright.Notation;

/// <summary>Either a single value, or a map that says more.</summary>
/// <param name="Short">The single value.</param>
/// <param name="Long">The map.</param>
public sealed record EitherShape(ScalarShape Short, MapShape Long) : Shape
{
    /// <inheritdoc/>
    public override string Expected => $"{Short.Expected}, or {Long.Expected}";
}
