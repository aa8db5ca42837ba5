using Lanewright.Text;

namespace Lanewright.Notation;

/// <summary>A part of a tree that was read, with its place in the file.</summary>
/// <param name="Span">Where it stands.</param>
public abstract record Node(SourceSpan Span)
{
    /// <summary>What kind of thing this is, in words for a message.</summary>
    public abstract string Kind { get; }
}
