using Lanewright.Quantities;

namespace Lanewright.Model.Demands;

/// <summary>How often a kind of thing, or one model of it, fails and how long it stays down.</summary>
/// <param name="Part">What fails.</param>
/// <param name="PerYear">Failures of one of them in a year, on average; zero or more.</param>
/// <param name="Repair">From the failure until it works again, on average.</param>
public sealed record FailureRate(FailingPart Part, double PerYear, Duration Repair)
{
    /// <summary>The model it is the rate of, by its name in the catalogue; empty for all of the kind that have no rate of their
    /// own.</summary>
    public string Model { get; init; } = "";

    /// <summary>Where the rate comes from, in the words of the plan; empty where it does not say.</summary>
    public string Source { get; init; } = "";
}
