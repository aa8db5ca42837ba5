using Lanewright.Quantities;

namespace Lanewright.Engineering.Links;

/// <summary>One contribution to a loss.</summary>
/// <param name="What">What causes it.</param>
/// <param name="Loss">How much.</param>
public sealed record LossPart(string What, Decibels Loss);
