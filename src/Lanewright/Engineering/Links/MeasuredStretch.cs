using Lanewright.Quantities;

namespace Lanewright.Engineering.Links;

/// <summary>A part of a channel whose loss was measured, what lies in it included.</summary>
/// <param name="Loss">The loss.</param>
/// <param name="Length">Its length.</param>
/// <param name="Connections">Mated pairs in it.</param>
/// <param name="Splices">Splices in it.</param>
public sealed record MeasuredStretch(Decibels Loss, Length Length, int Connections, int Splices);
