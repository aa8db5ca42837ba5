namespace Lanewright.Notation;

/// <summary>How large a text may be. A hostile file meets these in a second and in little memory.</summary>
public static class TreeBounds
{
    /// <summary>Characters in one file.</summary>
    public const int MostCharacters = 32 * 1024 * 1024;

    /// <summary>Levels of nesting.</summary>
    public const int MostLevels = 32;

    /// <summary>Values in one file, repeated ones counted each time they are repeated.</summary>
    public const int MostValues = 1_000_000;

    /// <summary>Characters in one value.</summary>
    public const int MostCharactersInValue = 64 * 1024;

    /// <summary>Syntax faults reported before reading of a file ends.</summary>
    public const int MostSyntaxFaults = 10;
}
