using System.Collections.Immutable;
using Lanewright.Text;

namespace Lanewright.Notation;

/// <summary>A list of things.</summary>
/// <param name="Span">Where it stands.</param>
/// <param name="Items">Its members in order.</param>
public sealed record ListNode(SourceSpan Span, ImmutableArray<Node> Items) : Node(Span)
{
    /// <inheritdoc/>
    public override string Kind => "a list";
}
