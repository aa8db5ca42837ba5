namespace Lanewright.Deliverables.Labels;

/// <summary>What is written on one end of a cable.</summary>
/// <param name="Cable">The cable.</param>
/// <param name="End">Which end: <c>from</c>, <c>to</c>, or <c>to 3</c> for the third leg of a fan-out.</param>
/// <param name="Near">The port at this end.</param>
/// <param name="Far">The port at the other; of a fan-out's root the first and how many more.</param>
/// <param name="Medium">What the cable is.</param>
public sealed record CableLabel(string Cable, string End, string Near, string Far, string Medium);
