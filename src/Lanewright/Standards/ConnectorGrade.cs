using Lanewright.Quantities;

namespace Lanewright.Standards;

/// <summary>A grade of randomly mated single-mode connectors, by the loss its population stays inside.</summary>
/// <param name="Name">The letter.</param>
/// <param name="Mean">Largest mean loss.</param>
/// <param name="Percentile97">Loss that 97 % of matings stay at or below.</param>
public sealed record ConnectorGrade(string Name, Known<Decibels> Mean, Known<Decibels> Percentile97);
