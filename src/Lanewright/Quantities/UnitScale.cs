namespace Lanewright.Quantities;

/// <summary>A unit as it is written, and its size in the unit the quantity is stored in.</summary>
/// <param name="Name">The text after the number, case and all.</param>
/// <param name="Factor">How many stored units one of these is.</param>
public sealed record UnitScale(string Name, double Factor);
