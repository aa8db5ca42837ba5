using Lanewright.Text;

namespace Lanewright.Notation;

/// <summary>A single value as text; what it means is for its shape to say.</summary>
/// <param name="Span">Where it stands.</param>
/// <param name="Value">The text without quotes.</param>
/// <param name="IsEmpty">Whether nothing at all was written.</param>
public sealed record ScalarNode(SourceSpan Span, string Value, bool IsEmpty = false) : Node(Span)
{
    /// <inheritdoc/>
    public override string Kind => IsEmpty ? "nothing" : "a single value";
}
