using System.Collections.Immutable;

namespace Lanewright.Notation;

/// <summary>A single value.</summary>
/// <param name="Words">What is expected, in words, with an example.</param>
/// <param name="Accepts">Whether a text is such a value.</param>
public sealed record ScalarShape(string Words, Func<string, bool> Accepts) : Shape
{
    /// <summary>A pattern in the JSON Schema dialect that allows the same texts, or null when any text will do.</summary>
    public string? Pattern { get; init; }

    /// <summary>The only texts allowed, when there is a fixed set.</summary>
    public ImmutableArray<string> Choices { get; init; } = [];

    /// <summary>Whether YAML may also write the value as a bare number.</summary>
    public bool MayBeNumber { get; init; }

    /// <summary>Whether YAML may also write the value as a bare yes or no.</summary>
    public bool MayBeSwitch { get; init; }

    /// <inheritdoc/>
    public override string Expected => Words;
}
