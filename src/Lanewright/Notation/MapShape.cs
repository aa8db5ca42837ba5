using System.Collections.Immutable;

namespace Lanewright.Notation;

/// <summary>A map with known keys.</summary>
/// <param name="Title">What the map describes.</param>
/// <param name="Keys">Its keys in the order of the manual.</param>
public sealed record MapShape(string Title, ImmutableArray<KeyShape> Keys) : Shape
{
    /// <inheritdoc/>
    public override string Expected => $"keys that describe {Title}";
}
