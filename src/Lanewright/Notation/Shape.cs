namespace Lanewright.Notation;

/// <summary>What a part of a text may look like: the one description from which checking, the JSON Schema and the manual come.</summary>
public abstract record Shape
{
    /// <summary>What is expected, in words for a message.</summary>
    public abstract string Expected { get; }
}
