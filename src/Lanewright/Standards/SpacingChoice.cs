using Lanewright.Quantities;

namespace Lanewright.Standards;

/// <summary>How far apart channels lie where nobody states it, and why.</summary>
/// <param name="Spacing">From channel to channel.</param>
/// <param name="Why">What it follows from, in a few words.</param>
public sealed record SpacingChoice(Frequency Spacing, string Why)
{
    /// <summary>Why, where somebody does state it.</summary>
    public const string Stated = "as stated";
}
