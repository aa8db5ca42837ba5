namespace Lanewright.Notation;

/// <summary>One key a map may have.</summary>
/// <param name="Name">The key.</param>
/// <param name="Value">What it may be set to.</param>
/// <param name="Meaning">What it says, in one sentence for the manual.</param>
public sealed record KeyShape(string Name, Shape Value, string Meaning)
{
    /// <summary>Whether the map is wrong without it.</summary>
    public bool IsRequired { get; init; }

    /// <summary>What holds when it is left out; empty when nothing does.</summary>
    public string Otherwise { get; init; } = "";
}
