using Lanewright.Quantities;

namespace Lanewright.Model.Demands;

/// <summary>How often a kind of thing fails and how long it stays down.</summary>
/// <param name="Part">What fails.</param>
/// <param name="PerYear">Failures of one of them in a year, on average; zero or more.</param>
/// <param name="Repair">From the failure until it works again, on average.</param>
public sealed record FailureRate(FailingPart Part, double PerYear, Duration Repair);
