namespace Lanewright.Engineering.Mating;

/// <summary>Why two ends do not work together.</summary>
/// <param name="CheckName">The comparison that fails, by <see cref="Links.CheckNames"/>.</param>
/// <param name="Text">What is wrong.</param>
public sealed record MatingReason(string CheckName, string Text);
