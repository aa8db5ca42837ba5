namespace Lanewright.Engineering.Load;

/// <summary>One thing that may fail.</summary>
/// <param name="Name">What it is called; names decide which member of a class is shown.</param>
/// <param name="Kind">What sort of thing it is.</param>
/// <param name="Outage">What is down when it fails.</param>
public sealed record FailureUnit(string Name, FailureKind Kind, Outage Outage)
{
    /// <summary>Its model by the name in the catalogue; empty for what has none.</summary>
    public string Model { get; init; } = "";
}
