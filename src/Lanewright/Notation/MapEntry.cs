namespace Lanewright.Notation;

/// <summary>One key of a map with its value.</summary>
/// <param name="Key">The key.</param>
/// <param name="Value">What it is set to.</param>
public sealed record MapEntry(ScalarNode Key, Node Value);
